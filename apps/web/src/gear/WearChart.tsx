import type { ComponentWear, PositionWear } from '@quartermark/engine/gear';
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
    <figure className={styles.figure}>
      <svg
        className={styles.chart}
        viewBox={`0 0 ${CHART.width} ${CHART.height}`}
        aria-hidden="true"
        focusable="false"
      >
        <path className={styles.axis} d={`M${CHART.left} ${CHART.top}V${FOOT}H${RIGHT}`} />
        {chart.yTicks.map(({ at, words }) => (
          <g key={words}>
            <path className={styles.axis} d={`M${CHART.left - 4} ${at}h4`} />
            <text className={styles.beside} x={CHART.left - 7} y={at + 4}>
              {words}
            </text>
          </g>
        ))}
        {chart.xTicks.map(({ at, words }) => (
          <g key={words}>
            <path className={styles.axis} d={`M${at} ${FOOT}v4`} />
            <text className={styles.below} x={at} y={FOOT + 16}>
              {words}
            </text>
          </g>
        ))}
        <text className={styles.end} x={RIGHT} y={CHART.height - 4}>
          {chart.along}
        </text>
        <text className={styles.start} x={2} y={10}>
          {position.unit}
        </text>
        {chart.floors.map(({ y, words }) => (
          <g key={words}>
            <path className={styles.floor} d={`M${CHART.left} ${y}H${RIGHT}`} />
            <text className={styles.start} x={CHART.left + 4} y={y - 4}>
              {words}
            </text>
          </g>
        ))}
        <path className={styles.now} d={`M${chart.now} ${CHART.top}V${FOOT}`} />
        <text className={styles.below} x={chart.now} y={10}>
          today
        </text>
        {chart.low ? <path className={styles.low} d={chart.low} /> : null}
        {chart.likely ? <path className={styles.likely} d={chart.likely} /> : null}
        {chart.points.map(({ id, x, y, isNew }) => (
          <circle key={id} className={isNew ? styles.hollow : styles.dot} cx={x} cy={y} r="4" />
        ))}
      </svg>
      <figcaption className={styles.caption}>{captionOf(position)}</figcaption>
    </figure>
  );
}
