import type { Bedding, ComponentLife, LifeTotal } from '../gear/result.ts';
import type { DistanceUnit } from '../log/units.ts';
import { formatDay } from './format-day.ts';
import { formatCount, formatDistance } from './format-quantity.ts';
import { capital, listWords } from './grammar.ts';

const POSITION_WORDS: Readonly<Record<string, string>> = {
  frontleft: 'front left',
  frontright: 'front right',
  rearleft: 'rear left',
  rearright: 'rear right',
};

const BOTH = ['front', 'rear'];

/** Where on a car, in words: "the rear axle", "both axles", "front left and front right"; empty where nobody said. */
export function positionWords(positions: readonly string[]): string {
  const said = positions.map((text) => POSITION_WORDS[text.toLowerCase()] ?? text);
  const axle = said.length === 1 ? /^(front|rear)(?: axle)?$/i.exec(said[0] ?? '') : null;
  if (axle?.[1] !== undefined) return `the ${axle[1].toLowerCase()} axle`;
  const plain = said.map((text) => text.toLowerCase().replace(/ axle$/, '')).sort();
  if (plain.length === 2 && plain.every((text, index) => text === BOTH[index])) return 'both axles';
  return listWords(said, 5);
}

/** What the words need to know of the car a component is on. */
export type FittedTo = { name: string; positions: readonly string[]; since: string };

/**
 * Where a component is and what it has done there.
 *
 * @param on null = on no car
 * @param life of the same component
 * @param unit unit to show distances in, that of the car's odometer
 * @example fittedLine(on, life, 'km')
 * // "On the rear axle of NAME since 3 May 2026, 14 sessions, 1,240 km."
 */
export function fittedLine(on: FittedTo | null, life: ComponentLife, unit: DistanceUnit): string {
  if (on === null) {
    const last = life.windows.at(-1);
    if (last === undefined) return 'Not fitted to any car yet.';
    return last.end === null ? 'On a car.' : `On no car since ${formatDay(last.end)}.`;
  }
  const place = positionWords(on.positions);
  const where = place === '' ? `On ${on.name}` : `On ${place} of ${on.name}`;
  const since = `${where} since ${formatDay(on.since)}`;
  const done = life.sinceFitted;
  if (done === null) return `${since}.`;
  const { sessions, distanceKm, launches } = done;
  if (sessions + distanceKm + launches === 0) return `${since}, no use on record there yet.`;
  return `${since}, ${amounts(sessions, distanceKm, launches, unit)}.`;
}

function amounts(sessions: number, km: number, launches: number, unit: DistanceUnit): string {
  return [
    formatCount(sessions, 'session'),
    formatDistance(km, unit),
    ...(launches > 0 ? [formatCount(launches, 'launch', 'launches')] : []),
  ].join(', ');
}

/** What a component has done in its whole life. @example "In all 40 sessions, 3,200 km, since it was new on 3 May 2025." */
export function lifeLine(life: ComponentLife, unit: DistanceUnit): string {
  const { sessions, distanceKm, launches } = life;
  if (sessions.amount === null || distanceKm.amount === null)
    return 'What it has done so far is not known.';
  const used = sessions.amount + distanceKm.amount + (launches.amount ?? 0) > 0;
  const done = used
    ? amounts(sessions.amount, distanceKm.amount, launches.amount ?? 0, unit)
    : 'no use on record yet';
  const totals: LifeTotal[] = [sessions, distanceKm, launches];
  if (totals.every(({ known }) => known)) {
    const since = life.newSince === null ? '' : `, since it was new on ${formatDay(life.newSince)}`;
    return used ? `In all ${done}${since}.` : `${capital(done)}${since}.`;
  }
  const why =
    life.newSince === null
      ? 'what it did before is not in the log'
      : 'some of its use is not in the log';
  return used ? `At least ${done}: ${why}.` : `${capital(done)}: ${why}.`;
}

/** What a screen says of the bedding of pads and discs, and whether somebody has to do something. */
export const BEDDING_WORDS: Readonly<Record<Bedding, { word: string; toDo: boolean }>> = {
  bedded: { word: 'bedded', toDo: false },
  firstSession: { word: 'to be bedded in the first session', toDo: true },
  notBedded: { word: 'not bedded yet', toDo: true },
  unknown: { word: 'bedding not on record', toDo: true },
};

/** The bedding of pads or discs in a word or two; null for other components. @example "New, not bedded yet" */
export function beddingWords(life: ComponentLife): string | null {
  if (life.bedding === null) return null;
  const { word } = BEDDING_WORDS[life.bedding];
  const isNew = life.sessions.known && life.sessions.amount === 0;
  return isNew && life.bedding === 'notBedded' ? `New, ${word}` : capital(word);
}
