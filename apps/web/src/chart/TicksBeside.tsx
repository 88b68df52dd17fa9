import styles from './Chart.module.css';
import type { Tick } from './ticks.ts';

/** Numbers to the left of a drawing's upright axis. @param left where the axis stands */
export function TicksBeside({ left, ticks }: { left: number; ticks: readonly Tick[] }) {
  return ticks.map(({ at, words }) => (
    <g key={words}>
      <path className={styles.axis} d={`M${left - 4} ${at}h4`} />
      <text className={styles.beside} x={left - 7} y={at + 4}>
        {words}
      </text>
    </g>
  ));
}
