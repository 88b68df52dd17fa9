import { addDays } from '@quartermark/engine/calendar';
import {
  carInput,
  type EntryDraft,
  type EntryInput,
  entryInput,
  eventInput,
  gearInput,
  itemInput,
  odometerProblem,
  orderInput,
  plannedLayUp,
  readingsAround,
  specSheet,
} from '@quartermark/engine/log';
import { describe, expect, test } from 'vitest';
import { CLUB } from './club.ts';
import { demoGarage } from './demo-garage.ts';
import type { SeedCar, SeedStep } from './seed-garage.ts';

const DAYS = ['2026-01-01', '2026-06-15', '2028-02-29'] as const;
const UUID_V7 = /^[0-9a-f]{8}-[0-9a-f]{4}-7[0-9a-f]{3}-[89ab][0-9a-f]{3}-[0-9a-f]{12}$/;

const carsOf = (day: string) => demoGarage(day).cars;
const written = (step: SeedStep): EntryDraft[] => ('entry' in step ? [step.entry] : []);
const entriesOf = (car: SeedCar) => car.entries.flatMap(written);
const isNew = (step: SeedStep) => 'entry' in step && !('amend' in step);

/** The day an entry speaks of; a drive of several days is written down on its last. */
const dayOf = (step: SeedStep) => ('entry' in step ? (endOf(step.entry) ?? step.entry.on) : null);
const endOf = (entry: EntryDraft) => (entry.kind === 'drive' ? entry.until : undefined);

describe.each(DAYS)('demoGarage() on %s', (day) => {
  test('demoGarage() gives the same garage for the same day', () => {
    expect(demoGarage(day)).toEqual(demoGarage(day));
  });

  test('demoGarage() writes cars, items and entries that the log accepts', () => {
    for (const car of carsOf(day)) {
      carInput.parse(car.car);
      for (const { item } of car.items) itemInput.parse(item);
      for (const entry of entriesOf(car)) entryInput.parse(entry);
    }
  });

  test('demoGarage() dates nothing after its day and begins 24 months before', () => {
    for (const car of carsOf(day)) {
      const dates = entriesOf(car).map((entry) => endOf(entry) ?? entry.on);
      expect(dates.toSorted().at(-1)?.localeCompare(day)).toBeLessThanOrEqual(0);
      expect(dates.toSorted()[0]?.localeCompare(addDays(day, -700))).toBeLessThan(0);
      expect(dates.toSorted()[0]?.localeCompare(addDays(day, -731))).toBeGreaterThan(0);
    }
  });

  test('demoGarage() gives every record an id of its own, shaped as UUIDv7', () => {
    const ids = carsOf(day).flatMap((car) => [
      car.id,
      ...car.items.map(({ id }) => id),
      ...car.entries.filter(isNew).flatMap((step) => written(step).map(({ id }) => id)),
    ]);
    expect(new Set(ids).size).toBe(ids.length);
    for (const id of ids) expect(id).toMatch(UUID_V7);
  });

  test('demoGarage() amends and removes only what was recorded before', () => {
    for (const car of carsOf(day)) {
      const known = new Set<string>();
      for (const step of car.entries) {
        if ('remove' in step) expect(known).toContain(step.remove);
        else if ('amend' in step) {
          expect(known).toContain(step.amend);
          expect(step.entry.id).toBe(step.amend);
        } else known.add(step.entry.id);
      }
    }
  });

  test('demoGarage() records in the order of the days, as people do', () => {
    for (const car of carsOf(day)) {
      const days = car.entries
        .filter((step) => !('amend' in step))
        .map(dayOf)
        .filter((each) => each !== null);
      expect(days).toEqual(days.toSorted());
    }
  });

  test('demoGarage() speaks only of its own cars, items and garage', () => {
    for (const car of carsOf(day)) {
      const items = new Set(car.items.map(({ id }) => id));
      for (const entry of entriesOf(car)) {
        expect(entry.car).toBe(car.id);
        expect(entry.zone).toBe(CLUB.zone);
        if (entry.kind === 'service') for (const id of entry.items) expect(items).toContain(id);
      }
    }
  });

  test('demoGarage() types odometers that fit their neighbours, but for the one that slipped', () => {
    const odd = carsOf(day).flatMap((car) => {
      const settled = settledOf(car);
      const slipped = settled.filter(({ id }) => id.endsWith('9005') && car.key === 'autocross');
      const setAside = new Set(slipped.map(({ id }) => id));
      return settled
        .filter((entry) => {
          const { odometer, on } = entry;
          const around = readingsAround(settled, entry, setAside);
          return odometer !== undefined && odometerProblem(around, { ...odometer, on }) !== null;
        })
        .map(({ id }) => `${car.key} ${id.slice(-4)}`);
    });
    expect(odd).toEqual(['autocross 9005']);
  });
});

/** A car's entries after amendments and removals. */
function settledOf(car: SeedCar): EntryInput[] {
  const settled = new Map<string, EntryInput>();
  for (const step of car.entries) {
    if ('remove' in step) settled.delete(step.remove);
    else settled.set(step.entry.id, entryInput.parse(step.entry));
  }
  return [...settled.values()];
}

describe('demoGarage()', () => {
  const cars = carsOf('2026-06-15');
  const keyed = (key: string) => entriesOf(cars.find((car) => car.key === key) as SeedCar);

  test('demoGarage() keeps busy books of 100 to 230 entries and quiet ones of 30 to 60', () => {
    for (const car of cars) {
      const quiet = car.key === 'classic' || car.key === 'used';
      const count = car.entries.filter(isNew).length;
      expect(count).toBeGreaterThanOrEqual(quiet ? 30 : 100);
      expect(count).toBeLessThanOrEqual(quiet ? 60 : 230);
    }
  });

  test('demoGarage() watches 6 to 10 items a car, each with the source of its limits', () => {
    for (const car of cars) {
      expect(car.items.length).toBeGreaterThanOrEqual(6);
      expect(car.items.length).toBeLessThanOrEqual(10);
      expect(car.items.map(({ item }) => item.source)).not.toContain(undefined);
      const roles = car.items.map(({ item }) => item.role).filter((role) => role !== undefined);
      expect(roles.slice(0, 2)).toEqual(['engineOil', 'oilFilter']);
    }
  });

  test('demoGarage() keeps two books in miles and US quarts and six in kilometres', () => {
    const units = cars.map(({ key, car }) => `${key} ${car.unit}`);
    expect(units.filter((unit) => unit.endsWith('mi'))).toEqual(['strip mi', 'used mi']);
    for (const key of ['strip', 'used']) {
      const volumes = keyed(key).flatMap((entry) =>
        entry.kind === 'oilTopUp' && entry.volume ? [entry.volume.unit] : [],
      );
      expect(new Set(volumes)).toEqual(new Set(['usQt']));
    }
  });

  test('demoGarage() speaks in its own book only of what the garage has, and dates nothing ahead', () => {
    const { gear, gearEntries, events, orders, specs } = demoGarage('2026-06-15');
    const pieces = new Set(gear.map(({ id }) => id));
    const ids = gear.flatMap(({ id, items }) => [id, ...items.map((item) => item.id)]);
    expect(new Set(ids).size).toBe(ids.length);
    for (const entry of gearEntries.flatMap(written)) {
      entryInput.parse(entry);
      expect(entry.on.localeCompare('2026-06-15')).toBeLessThan(0);
      const about = 'component' in entry ? entry.component : entry.gear;
      // wheels are torqued on a car
      if (entry.kind !== 'wheels') expect(pieces).toContain(about);
      if (entry.car !== undefined) expect(cars.map(({ id }) => id)).toContain(entry.car);
    }
    for (const { gear: piece, items } of gear) {
      gearInput.parse(piece);
      for (const { item } of items) expect(itemInput.parse(item).source).toBeDefined();
    }
    for (const { event } of events) {
      const { cars: going, crew = [], travel } = eventInput.parse(event);
      for (const id of going) expect(cars.map((car) => car.id)).toContain(id);
      for (const { car, people } of crew) {
        expect(going).toContain(car);
        for (const person of people) expect(pieces).toContain(person);
      }
      for (const id of travel?.trailered ?? []) expect(going).toContain(id);
    }
    const items = cars.flatMap((car) => car.items.map(({ id }) => id));
    for (const { itemId, order } of orders) {
      expect(items).toContain(itemId);
      const { on, arrived = on } = orderInput.parse(order);
      expect(on.localeCompare('2026-06-15')).toBeLessThan(0);
      expect(arrived.localeCompare('2026-06-15')).toBeLessThan(0);
    }
    for (const { carId, sheet } of specs) {
      specSheet.parse(sheet);
      expect(cars.map(({ id }) => id)).toContain(carId);
    }
    const kinds = gear.map((piece) => piece.gear.kind);
    expect(kinds.filter((kind) => kind === 'person')).toHaveLength(4);
    expect(
      gear.filter((piece) => 'sort' in piece.gear && piece.gear.sort === 'tyreSet'),
    ).toHaveLength(4);
  });

  test('demoGarage() plans the lay-ups of the winter that comes next, whatever the day', () => {
    for (const day of [...DAYS, '2026-10-31', '2026-11-01', '2026-12-20']) {
      const { plannedLayUps } = demoGarage(day);
      expect(plannedLayUps).toHaveLength(2);
      for (const { carId, layUp } of plannedLayUps) {
        expect(cars.map(({ id }) => id)).toContain(carId);
        expect(plannedLayUp.parse(layUp).start.localeCompare(day)).toBe(1);
        expect(layUp.start.localeCompare(addDays(day, 380))).toBe(-1);
      }
    }
  });

  test('demoGarage() names only people, places and products of its own invention', () => {
    const names = cars.flatMap((car) =>
      entriesOf(car).flatMap((entry) => [
        entry.driver,
        'venue' in entry ? entry.venue : undefined,
        'product' in entry ? entry.product?.split(' ')[0] : undefined,
      ]),
    );
    const invented: unknown[] = [
      ...CLUB.drivers,
      CLUB.circuit,
      CLUB.dragStrip,
      CLUB.autocross,
      'Siltane',
      undefined,
    ];
    for (const name of names) expect(invented).toContain(name);
    expect(cars.map(({ car }) => car.name)).toEqual([
      'Ardvane Thessel',
      'Pellorin Duskar',
      'Hobrand Mulligar',
      'Tovrik Pim',
      'Ondrey Salvane',
      'Lumeck Farro',
      'Ardvane Corrit',
      'Velmora Quist',
    ]);
  });

  test('demoGarage() writes no capitalised name inside a sentence but those it invented', () => {
    const notes = cars.flatMap((car) => entriesOf(car).flatMap(({ note }) => note ?? []));
    const inside = notes.flatMap((note) => note.match(/(?<=[a-z,;] )[A-Z][a-z]+/g) ?? []);
    expect(new Set(inside)).toEqual(new Set(['Tam', 'Friday']));
  });
});
