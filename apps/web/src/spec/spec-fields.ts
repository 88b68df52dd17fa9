import { SPEC_GROUPS, type SpecGroup, type SpecSheet } from '@quartermark/engine/log';
import type { Problems } from '../items/limit-fields.ts';

/** One line of the sheet as its form holds it. */
export type SpecRow = { what: string; value: string; source: string };

/** What the form of a sheet holds: its lines by group, in their order, as typed. */
export type SpecFields = { baseRevision: number } & Record<SpecGroup, SpecRow[]>;

export const emptyRow = (): SpecRow => ({ what: '', value: '', source: '' });

/** A stored sheet as its form shows it. @param revision 0: there is none yet */
export function specFields({ lines }: SpecSheet, revision: number): SpecFields {
  const rowsOf = (group: SpecGroup) =>
    lines
      .filter((line) => line.group === group)
      .map(({ what, value, source = '' }) => ({ what, value, source }));
  return {
    baseRevision: revision,
    fluids: rowsOf('fluids'),
    torques: rowsOf('torques'),
    pressures: rowsOf('pressures'),
    jacking: rowsOf('jacking'),
    other: rowsOf('other'),
  };
}

const isBare = (row: SpecRow) => Object.values(row).every((text) => text.trim() === '');

/**
 * The sheet that the form holds; a line left wholly empty is left out. Problems are named by where they
 * stand: `torques.0.value`.
 */
export function readSpec(fields: SpecFields): { sheet: SpecSheet } | { problems: Problems } {
  const problems: Problems = {};
  const lines = SPEC_GROUPS.flatMap((group) =>
    fields[group].flatMap((row, at) => {
      if (isBare(row)) return [];
      const what = row.what.trim();
      const value = row.value.trim();
      const source = row.source.trim();
      if (what === '')
        problems[`${group}.${at}.what`] = 'Say what it is for, or take the line away.';
      if (value === '')
        problems[`${group}.${at}.value`] = 'Write the value with its unit, or take the line away.';
      for (const [name, text] of Object.entries({ what, value, source }))
        if (text.length > LONGEST)
          problems[`${group}.${at}.${name}`] =
            `At most ${LONGEST} characters; split it over two lines.`;
      return [{ group, what, value, ...(source === '' ? {} : { source }) }];
    }),
  );
  if (lines.length > MOST_LINES)
    problems.lines = `A sheet holds ${MOST_LINES} lines; take away ${lines.length - MOST_LINES}.`;
  return Object.keys(problems).length > 0 ? { problems } : { sheet: { lines } };
}

const LONGEST = 200;
const MOST_LINES = 200;
