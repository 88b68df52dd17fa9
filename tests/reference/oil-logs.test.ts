import { readdirSync, readFileSync } from 'node:fs';
import { analyseFile, canonicalJson, type OilDocument, type OilResult } from '@quartermark/engine';
import { describe, expect, it, test } from 'vitest';

/**
 * Source: 35 open edge cases of the oil method with the answers of an independent implementation, printed to
 * six decimals (`expect.reference`), and which logs must come to the same (`expect.same`). How a note is worded
 * is not compared.
 */
const folder = new URL('./data/oil-edge/', import.meta.url);
const files = readdirSync(folder).filter((name) => name.endsWith('.json'));

type Case = { status?: string; doubtful?: number; same?: string; reference: OilResult };

const caseOf = (name: string) => JSON.parse(readFileSync(new URL(name, folder), 'utf8'));
const expectedOf = (name: string): Case => caseOf(name).expect;
const answerTo = (name: string): OilResult => (analyseFile(caseOf(name)) as OilDocument).oil;

const RELATIVE = 1e-5;
/** Half of the last digit printed. */
const PRINTED = 0.51e-6;

/** Every leaf, by where it stands: "level.p05". */
function leavesOf(value: unknown, at: string): [string, unknown][] {
  if (typeof value !== 'object' || value === null) return [[at, value]];
  const members = Object.entries(value);
  // an empty list is something that is said, too
  if (members.length === 0) return [[at, JSON.stringify(value)]];
  return members.flatMap(([name, one]) => leavesOf(one, `${at}.${name}`));
}

function differences(found: unknown, wanted: unknown, relative: number): string[] {
  const [a, b] = [new Map(leavesOf(found, 'oil')), new Map(leavesOf(wanted, 'oil'))];
  return [...new Set([...a.keys(), ...b.keys()])].flatMap((at) => {
    const [one, other] = [a.get(at), b.get(at)];
    if (typeof one === 'number' && typeof other === 'number')
      return Math.abs(one - other) <= Math.max(relative * Math.abs(other), PRINTED)
        ? []
        : [`${at} is ${one}, not ${other}`];
    return one === other ? [] : [`${at} is ${String(one)}, not ${String(other)}`];
  });
}

/** Where an entry stands in its file differs between files that must come to the same. */
const withoutPlaces = (oil: OilResult) => ({
  ...oil,
  notes: [],
  lastReading: { ...oil.lastReading, entry: 0 },
  unexplainedRise: oil.unexplainedRise?.litres ?? null,
  doubtful: oil.doubtful.length,
  moved: oil.moved.map(({ direction }) => direction),
  offProcedure: oil.offProcedure.length,
  alerts: oil.alerts.length,
});

test('analyseFile() meets all 35 open oil logs', () => {
  expect(files).toHaveLength(35);
});

describe('analyseFile() of an open oil log', () => {
  it.each(files)('comes to every figure of %s', (name) => {
    const { reference } = expectedOf(name);
    const { notes, stripPerRun, ...found } = answerTo(name);
    const { notes: wantedNotes, ...wanted } = reference;
    expect(differences(found, wanted, RELATIVE)).toEqual([]);
    expect(canonicalJson(found.lastReading)).toBe(canonicalJson(wanted.lastReading));
    expect(notes).toHaveLength(wantedNotes.length);
    const hasRuns = JSON.stringify(caseOf(name)).includes('"strip"');
    expect(stripPerRun === undefined).toBe(!hasRuns);
  });

  const alike = files.filter((name) => expectedOf(name).same !== undefined);
  it.each(alike)('comes to the same for %s as for its pair', (name) => {
    const { same } = expectedOf(name);
    const [one, other] = [answerTo(name), answerTo(`${same}.json`)];
    expect(differences(withoutPlaces(one), withoutPlaces(other), 1e-9)).toEqual([]);
  });

  const told = files.filter((name) => {
    const { status, doubtful } = expectedOf(name);
    return status !== undefined || doubtful !== undefined;
  });
  it.each(told)('says of %s whether it is enough, and what is doubtful', (name) => {
    const { status, doubtful } = expectedOf(name);
    const found = answerTo(name);
    if (status !== undefined) expect(found.status).toBe(status);
    if (doubtful !== undefined) expect(found.doubtful).toHaveLength(doubtful);
  });

  it('has eight that must come to the same as another, and five that say only a little', () => {
    expect([alike.length, told.length]).toEqual([8, 5]);
  });
});
