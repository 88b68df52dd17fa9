import { complainTo, garageTonight, lastSaid, putFactOff } from '@quartermark/db';
import { addDays } from '@quartermark/engine/calendar';
import { mayLayAside } from '@quartermark/engine/display';
import { z } from 'zod';
import { commandFields } from '../asked.ts';
import { runCommand, type Writing } from '../command/run-command.ts';
import { garageViewOf } from '../garage/view-of.ts';
import { badField, refuse } from '../refused.ts';
import type { Written } from '../views.ts';
import type { Asker, World } from '../world.ts';

const FACTS_MAX = 50;
const FACT_MAX = 300;
/** What nobody has heard of for longer is forgotten, not put off. */
const DAYS_MAX = 60;

export const addPutOffInput = z.strictObject({
  ...commandFields,
  facts: z.array(z.string().min(1).max(FACT_MAX)).min(1).max(FACTS_MAX),
  /** the last civil date without a word of them */
  until: z.iso.date(),
});

type AddPutOff = z.output<typeof addPutOffInput>;

/**
 * Puts facts off for everybody of the garage: no letter tells them up to a day, unless they become worse. What
 * forbids driving is never put off.
 */
export function addPutOff(world: World, asker: Asker, input: AddPutOff): Promise<Written> {
  return runCommand(world, asker, 'putOff.add', input, async (writing) => {
    const { tx, garage, now, by } = writing;
    const { today } = garageViewOf(garage, now);
    if (input.until < today || input.until > addDays(today, DAYS_MAX))
      throw badField(
        'until',
        `until: choose a day from ${today} to ${addDays(today, DAYS_MAX)}; later than that it should be looked at again`,
      );
    const { grades, forbidding, unknown } = await knownOf(world, writing, today);
    if (input.facts.some((fact) => forbidding.has(fact)))
      throw refuse(
        'notAllowed',
        'facts',
        'What forbids driving is told until it is done; it cannot be put off.',
      );
    if (input.facts.some((fact) => unknown.has(fact)))
      throw refuse(
        'notAllowed',
        'facts',
        'What could not be worked out is told until it is: nobody knows yet what it would say.',
      );
    for (const fact of input.facts) {
      const grade = grades.get(fact);
      if (grade === undefined)
        throw badField('facts', 'facts: this is no longer so; open the list of what is due');
      const row = { garageId: garage.id, fact, until: input.until, grade };
      await putFactOff(tx, { ...row, putAt: now, putBy: by });
    }
    return { id: garage.id, revision: 0, version: 0 };
  });
}

/** Facts as bad as the asker was told that they are, else as they are now. */
async function knownOf(world: World, { tx, garage, by }: Writing, today: string) {
  const [{ facts }, said] = await Promise.all([
    garageTonight(tx, garage, today, complainTo(world.log)),
    lastSaid(tx, garage.id),
  ]);
  const told = new Map((said.get(by) ?? []).map((one) => [one.fact, one.grade]));
  const forbids = facts.filter((fact) => fact.kind === 'urgent' && !mayLayAside(fact.urgent));
  const unknown = facts.filter(({ kind }) => kind === 'notWorkedOut');
  return {
    grades: new Map(facts.map(({ id, grade }) => [id, told.get(id) ?? grade])),
    forbidding: new Set(forbids.map(({ id }) => id)),
    unknown: new Set(unknown.map(({ id }) => id)),
  };
}
