import { amountOf, type Contribution } from '../history/contribution.ts';
import type { AmountMeasure } from '../log/item.ts';
import { roundAmount } from '../wear/round-amount.ts';
import { beddingOf } from './bedding.ts';
import { readDateCode } from './date-code.ts';
import { lifeStart } from './life-start.ts';
import { measurements, readingsOf } from './measured.ts';
import type { Part } from './part.ts';
import { isCovered } from './part-ledger.ts';
import type { ComponentLife, LifeTotal, MeasuredRow } from './result.ts';
import { componentWear } from './wear-rate/component-wear.ts';

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
    wear: componentWear(part, gear),
    ...ageOf(part, gear.dateCode),
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

/** By the last measurement that gives a date code, else by its own. */
function ageOf(
  { own }: Part,
  ownCode: string | undefined,
): Pick<ComponentLife, 'ageFrom' | 'ageUnread'> {
  const measured = measurements(own).findLast(({ dateCode }) => dateCode !== undefined)?.dateCode;
  const code = measured ?? ownCode;
  if (code === undefined) return { ageFrom: null, ageUnread: null };
  const read = readDateCode(code);
  return 'problem' in read
    ? { ageFrom: null, ageUnread: read.problem }
    : { ageFrom: read, ageUnread: null };
}
