import styles from './LevelScale.module.css';

type LevelScaleProps = {
  /** the last reading: 0 at MIN, 1 at MAX; null with `mark`, or without a reading */
  fraction: number | null;
  mark: 'none' | 'over' | null;
  /** the oil was changed since: the reading is drawn hollow */
  old: boolean;
  /** where the level likely is today, and eight times in ten between the others; null: not known */
  likely: { low: number; likely: number; high: number } | null;
};

const TOP = 14;
const HEIGHT = 64;
const QUARTERS = [0.25, 0.5, 0.75];

/** Height of a fraction in the drawing; what lies outside the marks stays in sight. */
function y(fraction: number): number {
  return TOP + HEIGHT * (1 - Math.min(1.14, Math.max(-0.14, fraction)));
}

function drawn({ fraction, mark }: LevelScaleProps): number | null {
  if (mark === 'none') return y(-1);
  if (mark === 'over') return y(2);
  return fraction === null ? null : y(fraction);
}

/**
 * The two marks of a stick with the quarters between, in ink; beside it a bar over where the oil likely stands,
 * with a line at the likeliest, and a wedge where it stood when it was last read.
 */
export function LevelScale(level: LevelScaleProps) {
  const at = drawn(level);
  return (
    <svg className={styles.scale} viewBox="0 0 88 92" aria-hidden="true" focusable="false">
      <path d={`M34 ${TOP - 10}v${HEIGHT + 20}`} className={styles.stick} />
      <path d={`M26 ${y(1)}h16M26 ${y(0)}h16`} className={styles.mark} />
      <path d={QUARTERS.map((part) => `M30 ${y(part)}h8`).join('')} className={styles.quarter} />
      <text x="22" y={y(1) + 4} className={styles.word}>
        MAX
      </text>
      <text x="22" y={y(0) + 4} className={styles.word}>
        MIN
      </text>
      {level.likely === null ? null : <Likely {...level.likely} />}
      {at === null ? null : (
        <path d={`M66 ${at}l14 -7v14z`} className={level.old ? styles.hollow : styles.read} />
      )}
    </svg>
  );
}

/** A sliver is still to be seen. */
const LEAST = 3;

function Likely({ low, likely, high }: { low: number; likely: number; high: number }) {
  const [top, bottom] = [y(high), y(low)];
  const height = Math.max(LEAST, bottom - top);
  return (
    <>
      <rect className={styles.band} x="46" y={top} width="12" height={height} />
      <path className={styles.likely} d={`M44 ${y(likely)}h16`} />
    </>
  );
}
