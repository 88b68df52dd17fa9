import { NEED_GROUPS, type NeedGroup, needGroup } from '@quartermark/engine/display';
import { FIXED_NEEDS, WEIGHED_NEEDS } from '@quartermark/engine/log';
import type { CarReadiness, Need } from '@quartermark/engine/readiness';

/** What is asked, with what became of it on each car, by the car's id; a car it is not asked of is not there. */
export type NeedRow = {
  key: string;
  title: string;
  needs: Readonly<Record<string, Need>>;
  /** on every car of which it is asked */
  isFine: boolean;
};

export type NeedRows = { group: NeedGroup; rows: NeedRow[] };

const KINDS = [...FIXED_NEEDS, ...WEIGHED_NEEDS];

/**
 * The needs of several cars beside each other: what has the same name is the same row. Rows stand in groups,
 * as one walks round a car; a group of which nothing is asked is left out.
 */
export function needRows(cars: readonly CarReadiness[]): NeedRows[] {
  const rows = new Map<
    string,
    { kind: Need['kind']; title: string; needs: Record<string, Need> }
  >();
  for (const { car, needs } of cars)
    for (const need of needs) {
      const { kind, title } = need;
      const key = keyOf(need, (taken) => rows.get(taken)?.needs[car] !== undefined);
      const row = rows.get(key) ?? { kind, title, needs: {} };
      row.needs[car] = need;
      rows.set(key, row);
    }
  const all = [...rows].sort(
    ([, a], [, b]) =>
      KINDS.indexOf(a.kind) - KINDS.indexOf(b.kind) || a.title.localeCompare(b.title),
  );
  return NEED_GROUPS.flatMap((group) => {
    const those = all.filter(([, { kind }]) => needGroup(kind) === group);
    return those.length === 0 ? [] : [{ group, rows: those.map(rowOf) }];
  });
}

/** A second thing of the same name on one car has a row of its own. */
function keyOf({ kind, title }: Need, isTaken: (key: string) => boolean): string {
  const base = `${kind} ${title.toLowerCase()}`;
  let key = base;
  for (let count = 2; isTaken(key); count += 1) key = `${base} ${count}`;
  return key;
}

function rowOf([key, { title, needs }]: [string, Pick<NeedRow, 'title' | 'needs'>]): NeedRow {
  return {
    key,
    title,
    needs,
    isFine: Object.values(needs).every(({ status }) => status === 'met'),
  };
}
