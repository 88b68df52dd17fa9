import type { OilStory } from '@quartermark/engine';
import { type OilFacts, perWords } from '@quartermark/engine/display';
import drawn from '../chart/Chart.module.css';
import { TicksBeside } from '../chart/TicksBeside.tsx';
import { joinClasses } from '../components/index.ts';
import styles from './Chart.module.css';
import { ChartFoot } from './ChartFoot.tsx';
import { FOOT, FRAME } from './chart-frame.ts';
import { useChart } from './use-chart.ts';

type UseChartProps = {
  story: OilStory;
  odometer: { readingKm: number; totalKm: number } | null;
  facts: OilFacts;
};

/** Oil use along the log, road and hard use apart. The table beneath says the same in words. */
export function UseChart({ story, odometer, facts }: UseChartProps) {
  const chart = useChart(story, odometer, facts);
  if (chart === null) return null;
  const { road, hard, rise } = chart;
  return (
    <figure className={joinClasses(drawn.figure, styles.figure)} aria-labelledby="oil-use">
      <h2 id="oil-use">How much it uses</h2>
      <svg
        className={joinClasses(drawn.chart, styles.chart)}
        viewBox={`0 0 ${FRAME.width} ${FRAME.height}`}
        aria-hidden="true"
        focusable="false"
      >
        <TicksBeside left={FRAME.left} ticks={chart.yTicks} />
        <text className={drawn.start} x={2} y={10}>
          {perWords(facts)}
        </text>
        <path className={styles.band} d={road.band} />
        <path className={drawn.likely} d={road.likely} />
        {hard === null ? null : (
          <>
            <path className={styles.hardBand} d={hard.band} />
            <path className={styles.hardLikely} d={hard.likely} />
          </>
        )}
        {rise === null ? null : (
          <path className={styles.rise} d={`M${rise} ${FRAME.top}V${FOOT}`} />
        )}
        <ChartFoot along={chart.along} />
      </svg>
      <figcaption className={drawn.caption}>
        As it was known at each entry, with nothing that came later. Solid line and shaded band:
        road.{hard === null ? '' : ' Broken line and dotted edges: hard use.'} Eight times in ten
        the truth lies between the edges.
        {rise === null ? '' : ' Heavy line: where use likely rose.'}
      </figcaption>
    </figure>
  );
}
