import { isAmountLimit } from '@quartermark/engine';
import { analyseGear, type GearAnalysis } from '@quartermark/engine/gear';
import { describe, expect, test } from 'vitest';
import expected from '../expected.json' with { type: 'json' };
import { gearBookOf } from './book-of.ts';
import { demoGarage } from './demo-garage.ts';

type Found = Record<string, unknown>;
type Fact = Extract<(typeof expected.facts)[number], { piece: string }>;

const { asOf } = expected;
const garage = demoGarage(asOf);
const facts = expected.facts.filter((fact): fact is Fact => 'piece' in fact);

function pieceOf({ piece }: Fact) {
  const found = garage.gear.find(({ key }) => key === piece);
  if (found === undefined) throw new RangeError(`no piece is called ${piece}`);
  return found;
}

function lifeFound({ life }: GearAnalysis): Found {
  return {
    sessions: life?.sessions.amount,
    known: life?.sessions.known,
    km: life?.distanceKm.amount,
    bedding: life?.bedding,
  };
}

function itemFound(fact: Fact, { analysis }: GearAnalysis): Found {
  const item = pieceOf(fact).items.find(({ item: { name } }) => name === fact.item);
  const result = analysis.items.find(({ id }) => id === item?.id);
  const wanted: { measure?: string } = fact.expect;
  const limit = result?.limits.find(({ measure }) => measure === wanted.measure);
  if (result === undefined || limit === undefined)
    throw new RangeError(`${fact.piece} has no item "${fact.item}" with that limit`);
  const common = { state: result.state, measure: limit.measure, limit: limit.limit };
  return isAmountLimit(limit)
    ? { ...common, amount: limit.accrued, remaining: limit.remaining }
    : {
        ...common,
        due: limit.dueDate,
        elapsedDays: limit.elapsedDays,
        remainingDays: limit.remainingDays,
      };
}

describe('expected.json', () => {
  test.each(facts)('analyseGear() agrees with the hand on $id', (fact) => {
    const answer = analyseGear(gearBookOf(garage, pieceOf(fact), asOf));
    const found = fact.item === 'life' ? lifeFound(answer) : itemFound(fact, answer);
    for (const [member, value] of Object.entries(fact.expect)) {
      if (member === 'unit') continue;
      if (typeof value === 'number') expect(found[member], member).toBeCloseTo(value, 6);
      else expect(found[member], member).toBe(value);
    }
  });

  test.each(facts)('demoGarage() holds each entry of its own book that $id rests on', (fact) => {
    const ids = gearBookOf(garage, pieceOf(fact), asOf).entries.map(({ id }) => id);
    for (const id of fact.evidence) expect(ids).toContain(id);
  });

  test('analyseGear() finds nothing odd in what the club owns', () => {
    const odd = garage.gear.flatMap((piece) =>
      analyseGear(gearBookOf(garage, piece, asOf)).analysis.flags.map(
        ({ code, entry }) => `${piece.key} ${code} ${entry?.slice(-4)}`,
      ),
    );
    expect(odd).toEqual([]);
  });
});
