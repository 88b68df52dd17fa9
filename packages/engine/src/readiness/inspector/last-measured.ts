import { readingsOf } from '../../gear/measured.ts';
import type { MeasuredReading } from '../../gear/result.ts';
import type { Entry, EntryOf } from '../../log/entry.ts';
import type { ComponentSort } from '../../log/gear.ts';
import type { Item } from '../../log/item.ts';
import type { Depth } from '../../log/quantity.ts';
import type { Piece } from '../asked.ts';
import type { PlaceFact } from './result.ts';

type Part = { id: string; sort: ComponentSort; life: NonNullable<Piece['result']>['life'] };
type Measure = EntryOf<'measure'> & Entry;

const CORNERS = ['frontLeft', 'frontRight', 'rearLeft', 'rearRight'] as const;
const SORT_OF: Readonly<Record<MeasuredReading['what'], ComponentSort>> = {
  tread: 'tyreSet',
  padInner: 'pads',
  padOuter: 'pads',
  disc: 'discs',
};

/**
 * The last measurement of each place, of what is on the car now: of the parts that are on it, and of the
 * car itself where no part was named. What was measured on the car before a part of the sort went on, or
 * before a service that renewed it, says nothing of what is on it today.
 *
 * @param kept the car's entries without tombstones, in order
 * @param servedOn civil date of the last service of a role, '' where there is none
 */
export function lastMeasured(
  kept: readonly Entry[],
  pieces: readonly Piece[],
  servedOn: (role: Item['role']) => string,
): PlaceFact[] {
  const measures = kept.filter((one) => one.kind === 'measure');
  const parts = pieces.flatMap(partOf);
  const found = [
    ...measures
      .filter(({ component }) => component === undefined)
      .flatMap((entry) => ofCar(entry, parts, servedOn)),
    ...parts.flatMap((part) => ofPart(part, measures)),
  ];
  const last = new Map<string, PlaceFact>();
  for (const fact of found) {
    const place = [fact.what, fact.corner, fact.groove ?? ''].join('/');
    const known = last.get(place);
    if (known === undefined || known.on <= fact.on) last.set(place, fact);
  }
  return [...last.values()].sort(byPlace);
}

function partOf({ gear: { id, gear }, result }: Piece): Part[] {
  return gear.kind === 'component' ? [{ id, sort: gear.sort, life: result?.life ?? null }] : [];
}

function ofCar(
  entry: Measure,
  parts: readonly Part[],
  servedOn: (role: Item['role']) => string,
): PlaceFact[] {
  return readingsOf(entry).flatMap((reading) => {
    const sort = SORT_OF[reading.what];
    const role = sort === 'tyreSet' ? 'tyres' : sort === 'pads' ? 'pads' : null;
    const since = [
      role === null ? '' : servedOn(role),
      ...parts.filter((part) => part.sort === sort).map(({ life }) => life?.fitted?.start ?? ''),
    ];
    if (since.some((on) => on > entry.on)) return [];
    return factOf(reading, { part: null, on: entry.on, entry: entry.id }, entry);
  });
}

function ofPart({ id, life }: Part, measures: readonly Measure[]): PlaceFact[] {
  return (life?.measured ?? [])
    .filter(({ on }) => on >= (life?.newSince ?? ''))
    .flatMap(({ entry, on, readings }) => {
      const typed = measures.find((one) => one.id === entry);
      return readings.flatMap((reading) => factOf(reading, { part: id, on, entry }, typed));
    });
}

type Rest = Pick<PlaceFact, 'part' | 'on' | 'entry'>;

function factOf(reading: MeasuredReading, rest: Rest, typed: Measure | undefined): PlaceFact[] {
  const { what, corner, groove, mm } = reading;
  if (mm === null) return [];
  const depth = typed && typedDepth(typed, reading);
  const inMm: Depth = { text: String(Math.round(mm * 10) / 10), unit: 'mm' };
  return [{ ...rest, what, corner, groove, depth: depth ?? inMm }];
}

/** What was typed, letter for letter. */
function typedDepth(entry: Measure, { what, corner, groove }: MeasuredReading): Depth | undefined {
  const here = (one: { corner: string }) => one.corner === corner;
  switch (what) {
    case 'tread':
      return entry.tread?.findLast((one) => here(one) && (one.groove ?? null) === groove)?.depth;
    case 'padInner':
      return entry.pads?.findLast((one) => here(one) && one.inner)?.inner;
    case 'padOuter':
      return entry.pads?.findLast((one) => here(one) && one.outer)?.outer;
    case 'disc':
      return entry.discs?.findLast((one) => here(one) && one.thickness)?.thickness;
  }
}

function byPlace(a: PlaceFact, b: PlaceFact): number {
  return (
    CORNERS.indexOf(a.corner) - CORNERS.indexOf(b.corner) ||
    compare(a.what, b.what) ||
    compare(a.groove ?? '', b.groove ?? '')
  );
}

function compare(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}
