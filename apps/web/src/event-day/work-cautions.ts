import type { EventCar } from '@quartermark/api/client';
import type { WorkLine } from '@quartermark/engine/readiness';
import { BEDDING, cautionsFor } from '../record/cautions.ts';

type Car = { profile: EventCar['profile']; items: readonly EventCar['items'][number][] };

/** What can hurt somebody in the work of one car, each caution once, in the order of the work. */
export function workCautions(lines: readonly WorkLine[], car: Car): string[] {
  return [...new Set(lines.flatMap((line) => cautionsOf(line, car)))];
}

function cautionsOf({ work, what, record }: WorkLine, { profile, items }: Car): string[] {
  if (work === 'bedIn') return [BEDDING];
  // only written down: nobody works on the car
  if (work === 'writeDown' || work === 'papers' || record?.at !== 'entry') return [];
  const item = items.find(({ id }) => id === record.item)?.item.name;
  const kind = record.kind === 'answer' ? 'repair' : record.kind;
  return cautionsFor(kind, profile, item === undefined ? [what] : [what, item]);
}
