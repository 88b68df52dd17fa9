import { type CarReadiness, type Need, type Remedy, WORK_KINDS, type WorkLine } from './result.ts';

/**
 * What is to be done on the cars of an event, each car's in the order in which somebody works: fluids
 * and pads before the wheels go on, wheels torqued before pads are bedded, papers and what is only
 * written down last. The engine oil and its filter are one line.
 *
 * What somebody took upon himself is left out, and so is what is met.
 */
export function workList(cars: readonly CarReadiness[]): WorkLine[] {
  return cars.flatMap(({ car, needs }) =>
    [...grouped(car, needs)].map(lineOf).sort((a, b) => placeOf(a) - placeOf(b)),
  );
}

type Open = Need & { remedy: Remedy };
type Group = { id: string; car: string; needs: Open[] };

function grouped(car: string, needs: readonly Need[]): Iterable<Group> {
  const groups = new Map<string, Group>();
  for (const need of needs) {
    if (need.remedy === null || need.accepted !== null || need.status === 'met') continue;
    const id = `${car}/${jobOf(need.remedy, need.id)}`;
    const group = groups.get(id) ?? { id, car, needs: [] };
    group.needs.push(need as Open);
    groups.set(id, group);
  }
  return groups.values();
}

/** What is one job in the garage: engine oil with its filter, a set that is renewed, all wheels at once. */
function jobOf({ work, record }: Remedy, need: string): string {
  if (work === 'fluids' && record?.at === 'entry' && record.kind === 'oilChange')
    return `${work}/oil`;
  if (record?.at === 'entry' && record.kind === 'fit' && record.component !== undefined)
    return `${work}/${record.component}`;
  return work === 'torque' ? `${work}/wheels` : `${work}/${need}`;
}

function lineOf({ id, car, needs }: Group): WorkLine {
  const [first] = needs as [Open, ...Open[]];
  const { work, record } = first.remedy;
  const remedies = needs.map(({ remedy }) => remedy);
  // whose parts take longest decides when to order
  const slowest = remedies.reduce((a, b) => (b.leadDays > a.leadDays ? b : a));
  return {
    id,
    car,
    work,
    what: [...new Set(remedies.map(({ what }) => what))].join('; '),
    needs: needs.map((need) => need.id),
    blocking: needs.some(({ weight }) => weight === 'blocking'),
    latest: least(remedies.map(({ latest }) => latest)),
    earliest: most(remedies.map(({ earliest }) => earliest)),
    parts: slowest.parts,
    leadDays: slowest.leadDays,
    feasible: remedies.every(({ feasible }) => feasible),
    record,
  };
}

const known = (days: readonly (string | null)[]) => days.filter((day) => day !== null).sort();
const least = (days: readonly (string | null)[]) => known(days)[0] ?? null;
const most = (days: readonly (string | null)[]) => known(days).at(-1) ?? null;
const placeOf = ({ work }: WorkLine) => WORK_KINDS.indexOf(work);
