import { randomUUID } from 'node:crypto';
import {
  connect,
  type Db,
  loadBook,
  replaceIfLater,
  replaceOilLine,
  SNAPSHOT_SCHEMA,
  withGarage,
} from '@quartermark/db';
import type { EntryDraft } from '@quartermark/engine/log';
import { answerOf } from '@quartermark/jobs/worker';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { type Home, home } from '../support/api-house.ts';
import { roadAsked } from '../support/road-asked.ts';

let at: Home;
let job: Db;
beforeAll(async () => {
  at = await home('api urgent');
  job = connect(at.database.jobUrl, { max: 2 });
});
afterAll(async () => {
  await job.close();
  await at.close();
});

const JOB = { kind: 'job' } as const;
const command = () => ({ garageId: at.garageId, commandId: randomUUID() });
const urgent = () => at.me.garage.urgent({ garageId: at.garageId });

async function addCar(name: string): Promise<string> {
  const carId = randomUUID();
  const profile = { oilSpanL: 1 };
  await at.me.car.add({ ...command(), carId, car: { name, unit: 'km', profile } });
  return carId;
}

/** Brings its snapshot up to date, as the worker does. */
async function count(carId: string, snapshotSchema = SNAPSHOT_SCHEMA): Promise<void> {
  const { garageId } = at;
  await withGarage(job, JOB, garageId, async (tx) => {
    const { book, inputVersion } = await loadBook(tx, garageId, carId, at.today);
    const { analysis, road, lines: _, said: __, oil, ...columns } = answerOf(roadAsked(book));
    const row = {
      ...columns,
      garageId,
      carId,
      inputVersion,
      engineVersion: 1,
      snapshotSchema,
      asOf: at.today,
      computedAt: new Date('2026-06-15T10:00:00Z'),
    };
    expect(await replaceIfLater(tx, row, { analysis, road })).toBe(true);
    await replaceOilLine(tx, { garageId, carId, line: oil });
  });
}

async function happens(carId: string, entry: EntryDraft): Promise<string> {
  await at.record({ ...entry, car: carId } as EntryDraft);
  await count(carId);
  return entry.id;
}

const hose = () =>
  at.draft('finding', {
    on: '2026-06-12',
    what: 'Brake hose cracked',
    where: 'rearLeft',
    severity: 'doNotDrive',
  });
const wheelsOff = () => at.draft('wheels', { on: '2026-06-13', change: 'off' });
const none = () => at.draft('oilCheck', { on: '2026-06-11', level: { how: 'none' } });

test('garage.urgent tells the worst first, by its words, and nothing of what can wait', async () => {
  expect(await urgent()).toEqual([]);
  const dry = await addCar('Dry');
  await happens(dry, none());
  const off = await addCar('Off');
  await happens(off, wheelsOff());
  const cracked = await addCar('Cracked');
  await happens(cracked, hose());
  const soft = await addCar('Soft');
  await happens(soft, at.draft('incident', { on: '2026-06-14', what: 'softPedal' }));
  const fine = await addCar('Fine');
  await happens(fine, at.draft('note', { note: 'Nothing.' }));
  const hard = await addCar('Before hard use');
  await happens(hard, { ...hose(), severity: 'beforeHardUse' } as EntryDraft);
  expect(await urgent()).toEqual([
    {
      carId: cracked,
      name: 'Cracked',
      stop: 'doNotDrive',
      oil: null,
      since: '2026-06-12',
      what: 'do not drive, Brake hose cracked, rear left, since 12 June 2026',
    },
    {
      carId: soft,
      name: 'Soft',
      stop: 'incident',
      oil: null,
      since: '2026-06-14',
      what: 'soft brake pedal on 14 June 2026, not looked over yet',
    },
    {
      carId: off,
      name: 'Off',
      stop: 'wheelsOff',
      oil: null,
      since: '2026-06-13',
      what: 'wheels off on 13 June 2026, torque not on record since',
    },
    {
      carId: dry,
      name: 'Dry',
      stop: null,
      oil: 'none',
      since: '2026-06-11',
      what: 'oil none on the stick',
    },
  ]);
});

const named = async () => (await urgent()).map(({ name, oil }) => [name, oil]);
const isNamed = async (name: string) => (await named()).some(([told]) => told === name);

test('garage.urgent is silent of what was answered, of a laid-up car, and of one that has left', async () => {
  const answered = await addCar('Answered');
  const notice = await happens(answered, hose());
  expect(await isNamed('Answered')).toBe(true);
  await happens(answered, at.draft('answer', { notice, answer: 'Hose renewed' }));
  expect(await isNamed('Answered')).toBe(false);

  const asleep = await addCar('Asleep');
  await happens(asleep, hose());
  expect(await isNamed('Asleep')).toBe(true);
  await happens(asleep, at.draft('layUp', { on: '2026-06-14' }));
  expect(await isNamed('Asleep')).toBe(false);

  const lent = await addCar('Lent');
  await happens(lent, none());
  await happens(lent, hose());
  await happens(lent, at.draft('handover', { what: 'lent' }));
  expect(await named()).toContainEqual(['Lent', null]);
  await happens(lent, at.draft('handover', { what: 'sold' }));
  expect(await isNamed('Lent')).toBe(false);
});

test('garage.urgent tells that a car is not to be driven though its figures are of another form', async () => {
  const carId = await addCar('Of another form');
  await at.record({ ...hose(), car: carId } as EntryDraft);
  await count(carId, SNAPSHOT_SCHEMA + 1);
  const told = (await urgent()).find((row) => row.carId === carId);
  expect(told).toMatchObject({ stop: 'doNotDrive', since: null, what: 'do not drive' });
});
