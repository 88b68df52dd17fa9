import {
  type CarTonight,
  compose,
  factsOfCar,
  type Said,
  SETTINGS_USUAL,
} from '@quartermark/digest';
import { analyseBook } from '@quartermark/engine';
import { addDays } from '@quartermark/engine/calendar';
import { dueLinesOf, laneOf, urgentOf } from '@quartermark/engine/display';
import { eventInput } from '@quartermark/engine/log';
import { carReadiness, usualRequirements } from '@quartermark/engine/readiness';
import { demoGarage } from '@quartermark/seed';
import { describe, expect, it } from 'vitest';
import { askedOf } from '../../seed/src/asked-of.ts';

const TODAY = '2026-06-15';
const NIGHTS = 15;
const garage = demoGarage(TODAY);

/** A car of the demo as the worker would store it on a morning, by the engine itself. */
function storedOn(today: string): CarTonight[] {
  const events = garage.events.map(({ id, event }) => ({ id, event: eventInput.parse(event) }));
  return garage.cars.map((car): CarTonight => {
    const own = events.filter(({ event }) => event.cars.includes(car.id));
    const asked = own.map(({ id, event }) => ({
      id,
      event,
      of: askedOf(garage, car, event, today),
    }));
    const nothing = eventInput.parse({ name: 'none', sort: 'meet', start: today });
    const { book } = asked[0]?.of ?? askedOf(garage, car, nothing, today);
    const analysis = analyseBook(book);
    const electric = book.car.profile.drive === 'electric';
    return JSON.parse(
      JSON.stringify({
        id: car.id,
        name: car.car.name,
        unit: car.car.unit,
        known: {
          asOf: today,
          lane: laneOf(book, analysis, null),
          lines: dueLinesOf(book, analysis),
          urgent: urgentOf(analysis),
          oil: electric ? null : analysis.oil,
        },
        events: asked.map(({ id, event, of }) => ({
          event: { id, name: event.name, start: event.start, end: event.end ?? event.start },
          readiness: carReadiness(of, { id, event }, usualRequirements(event.sort)),
        })),
        failedSince: null,
        putOffs: [],
      } satisfies CarTonight),
    ) as CarTonight;
  });
}

const nights = Array.from({ length: NIGHTS }, (_, at) => addDays(TODAY, at)).map((today) => {
  const cars = storedOn(today);
  return { today, cars, facts: cars.flatMap((car) => factsOfCar(car, today)) };
});

describe('the demo garage, by the engine', () => {
  it('has a fact for each thing that the engine calls overdue or due soon, of cars in use', () => {
    for (const { cars, facts } of nights)
      for (const { id, known } of cars) {
        if (known?.lane.status !== 'inUse') continue;
        for (const kind of ['overdue', 'dueSoon'] as const) {
          const lines = known.lines.filter(({ state }) => state === kind).map((line) => line.id);
          const told = facts.flatMap((fact) =>
            fact.car === id && fact.kind === kind && 'line' in fact ? [fact.line.id] : [],
          );
          expect(told).toEqual(lines);
        }
      }
    const kinds = new Set(nights.flatMap(({ facts }) => facts.map(({ kind }) => kind)));
    // nothing of it fails to be worked out; its oil has no notice on these days
    expect([...kinds].sort()).toEqual(['dueSoon', 'missedLook', 'overdue', 'urgent', 'verdict']);
  });

  it('gives short letters that say nothing twice within a week, the first one the longest', () => {
    const ids = garage.cars.map(({ id }) => id);
    let last: readonly Said[] = [];
    const toldOn = new Map<string, string>();
    const lengths: number[] = [];
    for (const { today, facts } of nights) {
      const of = { today, facts, last, settings: SETTINGS_USUAL };
      const letter = compose({
        ...of,
        garage: { name: 'Demo', cars: ids },
        member: { cars: 'all' },
      });
      lengths.push(letter?.lines.length ?? 0);
      for (const line of letter?.lines ?? [])
        for (const fact of line.facts) {
          const before = toldOn.get(fact);
          const news = line.why !== 'new' && line.why !== 'again';
          expect(news || before === undefined || addDays(before, 7) <= today).toBe(true);
          toldOn.set(fact, today);
        }
      last = letter?.said ?? last;
    }
    expect(lengths[0]).toBeGreaterThan(3);
    expect(Math.max(...lengths)).toBeLessThanOrEqual(8);
    expect(lengths).toContain(0);
  });
});
