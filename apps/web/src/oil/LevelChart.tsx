import type { OilStory } from '@quartermark/engine';
import drawn from '../chart/Chart.module.css';
import { joinClasses } from '../components/index.ts';
import styles from './Chart.module.css';
import { ChartFoot } from './ChartFoot.tsx';
import { END, FOOT, FRAME } from './chart-frame.ts';
import { type LevelDot, type LevelMark, levelChart } from './level-chart.ts';

type LevelChartProps = {
  story: OilStory;
  odometer: { readingKm: number; totalKm: number } | null;
  unit: 'km' | 'mi';
};

/** The likely level along the log, with what was read and poured in. The table beneath says the same in words. */
export function LevelChart({ story, odometer, unit }: LevelChartProps) {
  const chart = levelChart(story, odometer, unit);
  if (chart === null) return null;
  return (
    <figure className={joinClasses(drawn.figure, styles.figure)} aria-labelledby="oil-level">
      <h2 id="oil-level">The level so far</h2>
      <svg
        className={joinClasses(drawn.chart, styles.chart)}
        viewBox={`0 0 ${FRAME.width} ${FRAME.height}`}
        aria-hidden="true"
        focusable="false"
      >
        <path className={styles.band} d={chart.band} />
        <path
          className={styles.mark}
          d={`M${FRAME.left} ${chart.max}H${END}M${FRAME.left} ${chart.min}H${END}`}
        />
        <text className={drawn.beside} x={FRAME.left - 4} y={chart.max + 4}>
          MAX
        </text>
        <text className={drawn.beside} x={FRAME.left - 4} y={chart.min + 4}>
          MIN
        </text>
        <path className={drawn.likely} d={chart.likely} />
        {chart.marks.map((mark) => (
          <Mark key={`${mark.entry} ${mark.what}`} {...mark} />
        ))}
        {chart.dots.map((dot) => (
          <Dot key={dot.entry} {...dot} />
        ))}
        <ChartFoot along={chart.along} />
      </svg>
      <figcaption className={drawn.caption}>
        The line is the likely level, eight times in ten between the edges of the shaded band. A
        filled dot is a reading, a hollow one counts for less, a cross was read off procedure. A
        triangle at the foot is oil added, a dotted line an oil change, a line with a bar on top a
        repair{story.stepKm === null ? '.' : ', the heavy line where use likely rose.'}
      </figcaption>
    </figure>
  );
}

function Mark({ x, what }: LevelMark) {
  switch (what) {
    case 'added':
      return <path className={drawn.filled} d={`M${x} ${FOOT - 7}l4 7h-8z`} />;
    case 'changed':
      return <path className={styles.changed} d={`M${x} ${FRAME.top}V${FOOT}`} />;
    case 'repair':
      return <path className={styles.mark} d={`M${x - 4} ${FRAME.top}h8m-4 0V${FOOT}`} />;
    case 'rise':
      return <path className={styles.rise} d={`M${x} ${FRAME.top}V${FOOT}`} />;
  }
}

function Dot({ x, y, look }: LevelDot) {
  if (look === 'off') return <path className={styles.off} d={`M${x - 3} ${y - 3}l6 6m-6 0l6 -6`} />;
  const sound = look === 'sound';
  return (
    <circle className={sound ? drawn.filled : drawn.hollow} cx={x} cy={y} r={sound ? 2.2 : 3} />
  );
}
