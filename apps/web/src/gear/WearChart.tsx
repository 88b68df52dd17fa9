import type { ComponentWear, PositionWear } from '@quartermark/engine/gear';
import drawn from '../chart/Chart.module.css';
import { TicksBeside } from '../chart/TicksBeside.tsx';
import { joinClasses } from '../components/index.ts';
import styles from './WearChart.module.css';
import { CHART, wearChart } from './wear-chart.ts';
import { captionOf } from './wear-table.ts';

type WearChartProps = { position: PositionWear; wear: ComponentWear; unit: 'km' | 'mi' };

const RIGHT = CHART.width - CHART.right;
const FOOT = CHART.height - CHART.bottom;

/** How one place wore, and where its line meets the minima. The table below says the same in words. */
export function WearChart({ position, wear, unit }: WearChartProps) {
  const chart = wearChart(position, wear, unit);
  if (chart === null) return null;
  return (
    <figure className={drawn.figure}>
      <svg
        className={joinClasses(drawn.chart, styles.chart)}
        viewBox={`0 0 ${CHART.width} ${CHART.height}`}
        aria-hidden="true"
        focusable="false"
      >
        <path className={drawn.axis} d={`M${CHART.left} ${CHART.top}V${FOOT}H${RIGHT}`} />
        <TicksBeside left={CHART.left} ticks={chart.yTicks} />
        {chart.xTicks.map(({ at, words }) => (
          <g key={words}>
            <path className={drawn.axis} d={`M${at} ${FOOT}v4`} />
            <text className={drawn.below} x={at} y={FOOT + 16}>
              {words}
            </text>
          </g>
        ))}
        <text className={drawn.end} x={RIGHT} y={CHART.height - 4}>
          {chart.along}
        </text>
        <text className={drawn.start} x={2} y={10}>
          {position.unit}
        </text>
        {chart.floors.map(({ y, words }) => (
          <g key={words}>
            <path className={styles.floor} d={`M${CHART.left} ${y}H${RIGHT}`} />
            <text className={drawn.start} x={CHART.left + 4} y={y - 4}>
              {words}
            </text>
          </g>
        ))}
        <path className={styles.now} d={`M${chart.now} ${CHART.top}V${FOOT}`} />
        <text className={drawn.below} x={chart.now} y={10}>
          today
        </text>
        {chart.low ? <path className={styles.low} d={chart.low} /> : null}
        {chart.likely ? <path className={drawn.likely} d={chart.likely} /> : null}
        {chart.points.map(({ id, x, y, isNew }) => (
          <circle key={id} className={isNew ? drawn.hollow : drawn.filled} cx={x} cy={y} r="4" />
        ))}
      </svg>
      <figcaption className={drawn.caption}>{captionOf(position)}</figcaption>
    </figure>
  );
}
