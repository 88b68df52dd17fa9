import { connect, type Db, type OutboxRow, takeOutbox } from '@quartermark/db';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { type FreshDatabase, freshDatabase } from '../support/database.ts';
import { JobsGarage } from '../support/jobs-garage.ts';

let database: FreshDatabase;
let app: Db;
let job: Db;
let garage: JobsGarage;

beforeAll(async () => {
  database = await freshDatabase('db-outbox');
  app = connect(database.appUrl, { max: 2 });
  job = connect(database.jobUrl, { max: 4 });
  garage = await new JobsGarage(app).found();
});
afterAll(async () => {
  await app.close();
  await job.close();
  await database.drop();
});

const take = async (limit = 100) => {
  const taken: OutboxRow[] = [];
  await takeOutbox(job, limit, async (rows) => {
    taken.push(...rows);
  });
  return taken.map((row) => row.carId);
};

test('takeOutbox() takes the oldest first, each once', async () => {
  const cars = [await garage.addCar(), await garage.addCar(), await garage.addCar()];
  expect(await take(2)).toEqual(cars.slice(0, 2));
  expect(await take(2)).toEqual(cars.slice(2));
  expect(await take(2)).toEqual([]);
});

test('takeOutbox() leaves rows that could not be published for the next time', async () => {
  const carId = await garage.addCar();
  const away = takeOutbox(job, 100, () => Promise.reject(new Error('the queue is away')));
  await expect(away).rejects.toThrow('the queue is away');
  expect(await take()).toEqual([carId]);
});

test('takeOutbox() passes over rows that another relay has in its hands', async () => {
  const first = await garage.addCar();
  let second = '';
  await takeOutbox(job, 100, async (rows) => {
    expect(rows.map((row) => row.carId)).toEqual([first]);
    second = await garage.addCar();
    expect(await take()).toEqual([second]);
  });
  expect(await take()).toEqual([]);
});
