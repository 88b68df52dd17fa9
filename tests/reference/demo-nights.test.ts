import { readFileSync } from 'node:fs';
import path from 'node:path';
import type { EntryDraft } from '@quartermark/engine/log';
import { demoGarage } from '@quartermark/seed';
import { describe, expect, it } from 'vitest';

/**
 * The letters written down for thirty nights of the demo garage, held against the seed alone: by plain arithmetic of
 * dates, without the engine or the composing. What hangs on use or on readiness is not reckoned here.
 */
const FIRST = '2026-06-15';
const FILE = path.resolve(import.meta.dirname, 'data/demo-nights.json');
const DAY_MS = 86_400_000;

type Night = { date: string; letter: { lines: string[]; more: number } | null };
const { nights } = JSON.parse(readFileSync(FILE, 'utf8')) as { nights: Night[] };
const seed = demoGarage(FIRST);
type SeedCar = (typeof seed.cars)[number];
const LAST = nights.at(-1)?.date ?? '';

const plusDays = (date: string, days: number) =>
  new Date(Date.parse(`${date}T00:00:00Z`) + days * DAY_MS).toISOString().slice(0, 10);
const plusMonths = (date: string, months: number) => {
  const [year = 0, month = 0, day = 0] = date.split('-').map(Number);
  const last = new Date(Date.UTC(year, month - 1 + months + 1, 0)).getUTCDate();
  const due = Date.UTC(year, month - 1 + months, Math.min(day, last));
  return new Date(due).toISOString().slice(0, 10);
};
const firstWith = (begin: string) =>
  nights.find(({ letter }) => letter?.lines.some((line) => line.startsWith(begin)))?.date ?? null;

/** The car's book as it stands after corrections. */
function bookOf(steps: SeedCar['entries']): EntryDraft[] {
  const book = new Map<string, EntryDraft>();
  for (const step of steps)
    if ('entry' in step) book.set('amend' in step ? step.amend : step.entry.id, step.entry);
    else book.delete(step.remove);
  return [...book.values()];
}

/** Laid up by the last word on it. */
const isLaidUp = (book: readonly EntryDraft[]) =>
  book
    .filter(({ kind }) => kind === 'layUp' || kind === 'wakeUp')
    .sort((a, b) => a.on.localeCompare(b.on))
    .at(-1)?.kind === 'layUp';

/** Work that falls due by the calendar alone after the first night, and the date on which it does. */
const dueByCalendar = seed.cars.flatMap(({ car, items, entries }) => {
  const book = bookOf(entries);
  return items.flatMap(({ id, item }) => {
    const [limit, ...others] = item.limits;
    if (limit === undefined || others.length > 0) return [];
    const done = book
      .flatMap((entry) => (entry.kind === 'service' && entry.items.includes(id) ? entry.on : []))
      .concat(item.baseline?.on ?? [])
      .sort()
      .at(-1);
    const due = dueOf(limit, done);
    if (due === null || due < FIRST || due >= LAST) return [];
    return [{ car: car.name, name: item.name, due, laidUp: isLaidUp(book) }];
  });
});

function dueOf(limit: { measure: string; value: unknown }, done: string | undefined) {
  if (limit.measure === 'date') return String(limit.value);
  if (done === undefined) return null;
  if (limit.measure === 'days') return plusDays(done, Number(limit.value));
  return limit.measure === 'months' ? plusMonths(done, Number(limit.value)) : null;
}

describe('the letters written down for thirty nights', () => {
  it('are of thirty nights running', () => {
    expect(nights.map(({ date }) => date)).toEqual(
      Array.from({ length: 30 }, (_, night) => plusDays(FIRST, night)),
    );
  });

  it.each(dueByCalendar.filter(({ laidUp }) => !laidUp))(
    '$car: $name, due $due, is overdue on the day after',
    ({ car, name, due }) => {
      expect(firstWith(`Overdue. ${car}: ${name}`)).toBe(plusDays(due, 1));
    },
  );

  it('say nothing of what a laid-up car needs besides battery and papers', () => {
    const quiet = dueByCalendar.filter(({ laidUp }) => laidUp);
    expect(quiet.map(({ name }) => name)).toEqual(['Coolant']);
    for (const { car } of quiet) expect(JSON.stringify(nights)).not.toContain(car);
  });

  it('speak of an event two weeks before it at the soonest', () => {
    const named = seed.events.filter(({ event }) => event.start > plusDays(FIRST, 14));
    expect(named.map(({ event }) => event.name)).toHaveLength(2);
    for (const { event } of named) {
      const first = nights.find(({ letter }) =>
        letter?.lines.some((line) => line.includes(`for ${event.name}`)),
      );
      expect(first?.date).toBe(plusDays(event.start, -14));
    }
  });

  it('are there on the Thursday before a weekend with an event, of each of its cars', () => {
    const nameOf = new Map(seed.cars.map(({ id, car }) => [id, car.name]));
    const weekends = seed.events.filter(({ event }) => {
      const weekday = new Date(`${event.start}T00:00:00Z`).getUTCDay();
      return event.start > FIRST && event.start < LAST && (weekday === 0 || weekday === 6);
    });
    expect(weekends).toHaveLength(3);
    for (const { event } of weekends) {
      const weekday = new Date(`${event.start}T00:00:00Z`).getUTCDay();
      const thursday = plusDays(event.start, weekday === 6 ? -2 : -3);
      const told = nights.find(({ date }) => date === thursday)?.letter?.lines ?? [];
      for (const id of event.cars ?? [])
        expect(told.some((line) => line.includes(`${nameOf.get(id)} for ${event.name}`))).toBe(
          true,
        );
    }
  });

  it('have eight lines at most, the one that counts the rest included', () => {
    for (const { letter } of nights) {
      const { lines, more } = letter ?? { lines: ['.'], more: 0 };
      expect(lines.length + Math.min(more, 1)).toBeLessThanOrEqual(8);
      expect(lines.length).toBeGreaterThan(0);
    }
  });
});
