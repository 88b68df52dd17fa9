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

/** In from each end, so that a dot on zero is whole. */
const x = (share: number) => `${2 + share * 96}%`;

/** A dot with its interval; a year ago as a hollow dot on a thinner line beneath; the limit as a tall mark. */
function Bar({ what, figure, interval, ago, limit, hard }: BarProps) {
  return (
    <div className={styles.bar}>
      <p>
        {what} <span className={styles.figure}>{figure}</span>
      </p>
      <svg className={styles.drawing} aria-hidden="true" focusable="false">
        <line className={styles.rule} x1={x(0)} x2={x(1)} y1="29" y2="29" />
        {limit === null ? null : (
          <line className={styles.limit} x1={x(limit)} x2={x(limit)} y1="0" y2="29" />
        )}
        <line
          className={hard ? styles.hard : styles.line}
          x1={x(interval.from)}
          x2={x(interval.to)}
          y1="9"
          y2="9"
        />
        {interval.cut ? (
          <svg x={x(1)} y="0" overflow="visible" aria-hidden="true" focusable="false">
            <path className={styles.line} d="M0 9l-6 -4m6 4l-6 4" />
          </svg>
        ) : null}
        <circle className={styles.dot} cx={x(interval.at)} cy="9" r="5" />
        {ago === null ? null : (
          <>
            <line className={styles.thin} x1={x(ago.from)} x2={x(ago.to)} y1="21" y2="21" />
            <circle className={styles.hollow} cx={x(ago.at)} cy="21" r="4" />
          </>
        )}
      </svg>
    </div>
  );
}
