import { buildHistory, type History } from '../../history/index.ts';
import type { Book } from '../../log/book.ts';
import type { Entry } from '../../log/entry.ts';
import { volumeL } from '../../log/quantity.ts';
import { sortEntries } from '../../log/sort-entries.ts';
import { bookCase } from '../../readers/book-case.ts';
import type { Stretch } from './fuel-fit.ts';

/** A stretch with the fill-ups that begin it and make it. */
export type FilledStretch = Stretch & { entries: readonly string[] };

type Fill = Extract<Entry, { kind: 'fuel' }>;
/** A fill-up; `position` in the history where the tank was full and its odometer kept, else null. */
type Placed = { fill: Fill; position: number | null };

/**
 * The stretches between full tanks: each from a fill-up marked full, with an odometer that the history kept,
 * to the next such. What was filled in between belongs to it. Stretches in which use of unknown amount lies
 * (an odometer exchanged unseen) are left out.
 *
 * @param book entries after its `asOf` and tombstones do not count
 */
export function fuelStretches(book: Book): FilledStretch[] {
  const history = buildHistory(bookCase(book));
  const kept = new Set(history.odometer.kept.map(({ position }) => position));
  const places = new Map(history.timeline.map(({ entry }, at) => [entry.id, at]));
  const fills = sortEntries(book.entries).flatMap((entry): Placed[] => {
    if (entry.kind !== 'fuel' || entry.removed) return [];
    const place = places.get(entry.id);
    const full = entry.full === true && place !== undefined && kept.has(place);
    return [{ fill: entry, position: full ? place : null }];
  });
  return cutAtFull(fills).flatMap(({ from, to, fills: made }) => {
    const driven = drivenBetween(history, from.position, to.position);
    const litres = made.reduce((sum, { fill }) => sum + volumeL(fill.volume), 0);
    if (driven === null || driven.roadKm + driven.hardKm <= 0 || litres <= 0) return [];
    const entries = [from.fill.id, ...made.map(({ fill }) => fill.id)];
    return [{ ...driven, litres, entries }];
  });
}

type Full = { fill: Fill; position: number };

function cutAtFull(fills: readonly Placed[]): { from: Full; to: Full; fills: Placed[] }[] {
  const cuts: { from: Full; to: Full; fills: Placed[] }[] = [];
  let from: Full | null = null;
  let made: Placed[] = [];
  for (const { fill, position } of fills) {
    made.push({ fill, position });
    if (position === null) continue;
    const to = { fill, position };
    if (from !== null) cuts.push({ from, to, fills: made });
    from = to;
    made = [];
  }
  return cuts;
}

/** km after one position and up to another; null where use of unknown amount lies between. */
function drivenBetween(
  { contributions, odometer }: History,
  after: number,
  until: number,
): Pick<Stretch, 'roadKm' | 'hardKm'> | null {
  if (odometer.unknownGaps.some((gap) => gap.after < until && gap.until > after)) return null;
  const driven = { roadKm: 0, hardKm: 0 };
  for (const { position, useClass, distanceKm } of contributions) {
    if (position <= after || position > until) continue;
    const onRoad = useClass === 'road' || useClass === 'touring';
    driven[onRoad ? 'roadKm' : 'hardKm'] += distanceKm;
  }
  return driven;
}
