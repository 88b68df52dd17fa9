import { buildHistory, type History } from '../../history/build-history.ts';
import type { Book } from '../../log/book.ts';
import type { Entry } from '../../log/entry.ts';
import type { Item } from '../../log/item.ts';
import { mattersOf } from '../../matters/index.ts';
import { keptEntries } from '../../matters/kept-entries.ts';
import { bookCase } from '../../readers/book-case.ts';
import { lastServices } from '../../wear/last-service.ts';
import type { CarAsked, Piece } from '../asked.ts';
import { lastMeasured } from './last-measured.ts';
import type { FluidFact, InspectorFacts, LabelFact, TyreFact } from './result.ts';

/**
 * What an inspector asks of a car and of those who drive it, as the log has it on the book's day. Pure:
 * shuffled entries give the same answer.
 *
 * @throws RangeError for a date that does not exist
 */
export function inspectorFacts({ book, parts, drivers }: CarAsked): InspectorFacts {
  const history = buildHistory(bookCase(book));
  const kept = keptEntries(book.entries, book.asOf);
  const { findings, incidents, wheels } = mattersOf(book, history);
  const measured = lastMeasured(kept, parts, servedOn(book.items, history));
  return {
    odometer: odometerOf(book, history),
    brakeFluid: book.items
      .filter(({ role }) => role === 'brakeFluid')
      .map((item) => fluidOf(item, history)),
    pads: measured.filter(({ what }) => what === 'padInner' || what === 'padOuter'),
    tread: measured.filter(({ what }) => what === 'tread'),
    tyres: parts.flatMap(tyresOf),
    labels: drivers.flatMap(labelsOf),
    wheels,
    torque: torqueOf(kept),
    noise: noiseOf(book, kept),
    findings,
    incidents,
  };
}

function odometerOf({ entries }: Book, history: History): InspectorFacts['odometer'] {
  const last = history.odometer.kept.at(-1);
  const id = last === undefined ? null : history.timeline[last.position]?.entry.id;
  const entry = entries.find((one) => one.id === id);
  return entry?.odometer === undefined
    ? null
    : { reading: entry.odometer, on: entry.on, entry: entry.id };
}

function fluidOf({ id, name }: Item, history: History): FluidFact {
  const last = lastServices(history.timeline).get(id) ?? null;
  return { item: id, name, on: last?.entry.date ?? null, entry: last?.entry.id ?? null };
}

/** The last service of any item of a role; what was measured before it was measured of other parts. */
function servedOn(items: readonly Item[], history: History): (role: Item['role']) => string {
  const last = lastServices(history.timeline);
  return (role) =>
    items
      .filter((item) => item.role === role)
      .map(({ id }) => last.get(id)?.entry.date ?? '')
      .toSorted()
      .at(-1) ?? '';
}

function tyresOf({ gear: { id, gear }, result }: Piece): TyreFact[] {
  if (gear.kind !== 'component' || gear.sort !== 'tyreSet') return [];
  const life = result?.life ?? null;
  const code = life?.ageFrom ?? null;
  const two = (value: number) => String(value % 100).padStart(2, '0');
  return [
    {
      part: id,
      name: gear.name,
      positions: life?.fitted?.positions ?? [],
      code: code && `${two(code.week)}${two(code.year)}`,
    },
  ];
}

function labelsOf({ gear: { id, gear }, items }: Piece): LabelFact[] {
  return items.flatMap((item) =>
    item.limits.flatMap((limit) =>
      limit.measure === 'date'
        ? [{ gear: id, person: gear.name, item: item.id, name: item.name, until: limit.value }]
        : [],
    ),
  );
}

function torqueOf(kept: readonly Entry[]): InspectorFacts['torque'] {
  const last = kept.findLast((one) => one.kind === 'wheels' && one.change !== 'off');
  if (last?.kind !== 'wheels') return null;
  return { on: last.on, value: last.torque ?? null, cold: last.cold ?? null, entry: last.id };
}

function noiseOf({ car }: Book, kept: readonly Entry[]): InspectorFacts['noise'] {
  const last = kept.findLast((one) => one.kind === 'inspection' && one.noiseDb !== undefined);
  if (last?.kind === 'inspection' && last.noiseDb !== undefined)
    return { db: last.noiseDb, on: last.on, byWhom: last.byWhom ?? null };
  const { noiseDb } = car.profile;
  return noiseDb === undefined ? null : { db: noiseDb, on: null, byWhom: null };
}
