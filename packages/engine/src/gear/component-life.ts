import { amountOf, type Contribution } from '../history/contribution.ts';
import type { Entry } from '../log/entry.ts';
import type { AmountMeasure } from '../log/item.ts';
import type { Ledger } from '../wear/ledger.ts';
import { roundAmount } from '../wear/round-amount.ts';
import { beddingOf } from './bedding.ts';
import { readDateCode } from './date-code.ts';
import type { Fits } from './fit-windows.ts';
import { type LifeStart, lifeStart } from './life-start.ts';
import { measurements, readingsOf } from './measured.ts';
import type { Merged } from './merge-timelines.ts';
import { isCovered, type PlacedWindow } from './part-ledger.ts';
import type { ComponentLife, GearBook, LifeTotal, MeasuredRow } from './result.ts';

/** A gear with all that was worked out of it. */
export type Part = {
  book: GearBook;
  own: readonly Entry[];
  fits: Fits;
  windows: readonly PlacedWindow[];
  merged: Merged;
  ledger: Ledger;
  start: LifeStart | null;
};

const BEFORE_ALL = Number.NEGATIVE_INFINITY;
const AFTER_ALL = Number.POSITIVE_INFINITY;

/** A component's life as far as the log knows it; null for equipment and people. */
export function componentLife(part: Part): ComponentLife | null {
  const { book, own, windows, merged, ledger, start } = part;
  const { gear } = book.gear;
  if (gear.kind !== 'component') return null;
  const last = windows.at(-1);
  const on = last !== undefined && last.window.end === null ? last : null;
  return {
    distanceKm: total(part, 'km'),
    hours: total(part, 'hours'),
    sessions: total(part, 'sessions'),
    launches: total(part, 'launches'),
    newSince: start?.day?.on ?? null,
    windows: windows.map(({ window }) => window),
    fitted: on?.window ?? null,
    sinceFitted: on === null ? null : amountsAfter(ledger.contributions, on.from),
    bedding: beddingOf({
      sort: gear.sort,
      entries: own,
      contributions: ledger.contributions,
      places: merged.places,
      newAt: start?.position ?? null,
    }),
    measured: measuredRows(part),
    ageFrom: dateCodeOf(part, gear.dateCode),
  };
}

function sum(
  contributions: readonly Contribution[],
  measure: AmountMeasure,
  after: number,
  until: number,
): number {
  let amount = 0;
  for (const it of contributions)
    if (it.position > after && it.position <= until) amount += amountOf(it, measure);
  return roundAmount(amount);
}

function total({ ledger, windows, start }: Part, measure: AmountMeasure): LifeTotal {
  if (start === null && windows.length === 0) return { amount: null, known: false };
  const after = start?.position ?? BEFORE_ALL;
  return {
    amount: sum(ledger.contributions, measure, after, AFTER_ALL),
    known: start !== null && isCovered(windows, start.position, measure, false, start),
  };
}

function amountsAfter(contributions: readonly Contribution[], after: number) {
  const of = (measure: AmountMeasure) => sum(contributions, measure, after, AFTER_ALL);
  return {
    distanceKm: of('km'),
    hours: of('hours'),
    sessions: of('sessions'),
    launches: of('launches'),
  };
}

/** Each measurement beside the use the part had then, counted from when it was new. */
function measuredRows({ book, own, fits, merged, windows, ledger }: Part): MeasuredRow[] {
  return measurements(own).flatMap((entry): MeasuredRow[] => {
    const readings = readingsOf(entry);
    if (readings.length === 0) return [];
    const at = merged.places.get(entry.id) ?? AFTER_ALL;
    const start = lifeStart(
      { gear: book.gear.gear, asOf: book.asOf, fits: fits.entries, merged },
      at,
    );
    const heardOf = start !== null || windows.some(({ from }) => from <= at);
    const until = (measure: AmountMeasure) =>
      heardOf ? sum(ledger.contributions, measure, start?.position ?? BEFORE_ALL, at) : null;
    return [
      {
        entry: entry.id,
        on: entry.on,
        readings,
        sessionsThen: until('sessions'),
        kmThen: until('km'),
      },
    ];
  });
}

function dateCodeOf({ own }: Part, ownCode: string | undefined): ComponentLife['ageFrom'] {
  const measured = measurements(own).findLast(({ dateCode }) => dateCode !== undefined)?.dateCode;
  const code = measured ?? ownCode;
  if (code === undefined) return null;
  const read = readDateCode(code);
  return 'problem' in read ? null : read;
}
