import type { GarageView, OilComparedRow } from '@quartermark/api/client';
import {
  capital,
  changeWords,
  OIL_STOP_WORDS,
  type OilUnits,
  oilChangeOf,
  oilLimitWords,
  rateBand,
  rateFigure,
  STATUS_WORDS,
} from '@quartermark/engine/display';
import type { Route } from 'next';
import Link from 'next/link';
import styles from './ComparedCar.module.css';
import type { Interval, IntervalScale } from './interval-scale.ts';

type ComparedCarProps = {
  row: OilComparedRow;
  scale: IntervalScale;
  units: OilUnits;
  garage: GarageView;
};

/** One car: in words how it stands against a year ago, and its rates on the scale of all. */
export function ComparedCar({ row, scale, units, garage }: ComparedCarProps) {
  const { line, limit } = row;
  const limitWords = oilLimitWords(line, limit, units);
  return (
    <li className={styles.car} data-change={oilChangeOf(line)}>
      <div className={styles.words}>
        <h2>
          <Link
            href={`/g/${garage.id}/car/${row.carId}/oil` as Route}
            prefetch={false}
            className={styles.link}
          >
            {row.name}
          </Link>
        </h2>
        <p>{capital(changeWords(line, units))}.</p>
        {limitWords === null ? null : <p>{capital(limitWords)}.</p>}
        {line?.stop ? <p>Oil {OIL_STOP_WORDS[line.stop]}.</p> : null}
        {line?.status === 'weak' ? <p className={styles.soft}>Rough, so far.</p> : null}
        {row.status === null || row.status === 'inUse' ? null : (
          <p className={styles.soft}>{STATUS_WORDS[row.status]}.</p>
        )}
      </div>
      {line?.road ? (
        <div className={styles.bars}>
          <Bar
            what="Road"
            figure={`${rateFigure(line.road.likely, units)} (${rateBand(line.road, units)})`}
            interval={scale.interval(line.road)}
            ago={line.ago?.road ? scale.interval(line.ago.road) : null}
            limit={limit === null ? null : scale.place(limit)}
            hard={false}
          />
          {line.hard ? (
            <Bar
              what="Hard use"
              figure={`${rateFigure(line.hard.likely, units)} (${rateBand(line.hard, units)})`}
              interval={scale.interval(line.hard)}
              ago={line.ago?.hard ? scale.interval(line.ago.hard) : null}
              limit={null}
              hard
            />
          ) : null}
        </div>
      ) : null}
    </li>
  );
}

type BarProps = {
  what: string;
  figure: string;
  interval: Interval;
  ago: Interval | null;
  limit: number | null;
  hard: boolean;
};

const WIDTH = 300;
const PAD = 6;
const x = (share: number) => PAD + share * (WIDTH - 2 * PAD);

/** A dot with its interval; a year ago as a hollow dot on a thinner line beneath; the limit as a tall mark. */
function Bar({ what, figure, interval, ago, limit, hard }: BarProps) {
  return (
    <div className={styles.bar}>
      <p>
        {what} <span className={styles.figure}>{figure}</span>
      </p>
      <svg
        className={styles.drawing}
        viewBox={`0 0 ${WIDTH} 30`}
        preserveAspectRatio="none"
        aria-hidden="true"
        focusable="false"
      >
        <path className={styles.rule} d={`M${x(0)} 29H${x(1)}`} />
        {limit === null ? null : <path className={styles.limit} d={`M${x(limit)} 0v29`} />}
        <path
          className={hard ? styles.hard : styles.line}
          d={`M${x(interval.from)} 9H${x(interval.to)}`}
        />
        {interval.cut ? <path className={styles.line} d={`M${x(1)} 9l-6 -4m6 4l-6 4`} /> : null}
        <circle className={styles.dot} cx={x(interval.at)} cy="9" r="4.5" />
        {ago === null ? null : (
          <>
            <path className={styles.thin} d={`M${x(ago.from)} 21H${x(ago.to)}`} />
            <circle className={styles.hollow} cx={x(ago.at)} cy="21" r="3.5" />
          </>
        )}
      </svg>
    </div>
  );
}
