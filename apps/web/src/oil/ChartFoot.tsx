import drawn from '../chart/Chart.module.css';
import { type Along, END, FOOT, FRAME } from './chart-frame.ts';

/** The axis of distance beneath a drawing. */
export function ChartFoot({ along }: { along: Along }) {
  return (
    <>
      <path className={drawn.axis} d={`M${FRAME.left} ${FRAME.top}V${FOOT}H${END}`} />
      {along.ticks.map(({ at, words }) => (
        <g key={words}>
          <path className={drawn.axis} d={`M${at} ${FOOT}v4`} />
          <text className={at > END - 20 ? drawn.end : drawn.below} x={at} y={FOOT + 16}>
            {words}
          </text>
        </g>
      ))}
      <text className={drawn.end} x={END} y={FRAME.height - 4}>
        {along.words}
      </text>
    </>
  );
}
