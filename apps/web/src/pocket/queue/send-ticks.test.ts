import 'fake-indexeddb/auto';
import type { Refusal, Written } from '@quartermark/api/client';
import { entryInput } from '@quartermark/engine/log';
import { beforeEach, expect, test } from 'vitest';
import { type Command, isTick } from './command.ts';
import { askInstead, listCommands, markSending, putInLine, takeOut } from './line.ts';
import { type Doors, sendLine } from './send.ts';
import { openPocket, type PocketDb } from './store.ts';

const NOW = Date.parse('2026-06-20T10:00:00Z');
const madeAt = new Date(NOW).toISOString();
const WRITTEN: Written = { id: '', revision: 1, version: 1 };

let db: PocketDb;
let made = 0;
/** what the server was asked for, in order; a command it has answered already is not asked again */
let asked: string[];
/** what the server holds, by id of the tick */
let held: Map<string, string>;
let refuses: Record<string, Refusal>;
let fails: ReadonlySet<string>;
let losesAnswers: number;

beforeEach(async () => {
  db = await openPocket(`ticks-${made++}`);
  asked = [];
  held = new Map();
  refuses = {};
  fails = new Set();
  losesAnswers = 0;
});

const nameOf = (command: Command) =>
  isTick(command)
    ? `${command.input.tick.line} ${command.input.tick.done ? 'done' : 'undone'}`
    : (command.input.entry.note ?? '');

const doors: Doors = {
  knock: async () => {},
  command: async (command) => {
    const name = nameOf(command);
    asked.push(name);
    if (fails.has(name)) throw Object.assign(new Error('no disc'), { data: { refusal: null } });
    const refusal = refuses[name];
    if (refusal) throw Object.assign(new Error(refusal.message), { data: { refusal } });
    if (isTick(command)) held.set(command.input.tick.tickId, name);
    if (losesAnswers-- > 0) throw new TypeError('fetch failed');
    return WRITTEN;
  },
  entry: () => Promise.reject(new Error('no tick asks for an entry')),
  photo: () => Promise.reject(new Error('a tick has no photo')),
};

const tick = (line: string, done = true) =>
  putInLine(db, {
    verb: 'event.tick',
    input: {
      tick: { tickId: `tick-${made++}`, eventId: 'e', carId: 'c', line, done, madeAt },
      words: `Work ${line}`,
    },
    commandId: `command-${made++}`,
    garageId: 'g',
    madeAt,
  });

const record = (note: string) =>
  putInLine(db, {
    verb: 'entry.record',
    input: {
      entry: entryInput.parse({
        kind: 'note',
        id: note,
        on: '2026-06-20',
        zone: 'Europe/London',
        note,
      }),
      confirmed: [],
    },
    commandId: `command-${made++}`,
    garageId: 'g',
    madeAt,
  });

const send = () => sendLine(db, doors, () => NOW);
const left = async () =>
  (await listCommands(db)).map((command) => `${nameOf(command)}: ${command.state}`);

test('ticks and entries go out in the order of making', async () => {
  await tick('torque');
  await record('a note');
  await tick('oil');
  await tick('torque', false);
  expect(await send()).toBe('allSent');
  expect(asked).toEqual(['torque done', 'a note', 'oil done', 'torque undone']);
  expect(await left()).toEqual([]);
});

test('a tick whose answer was lost is sent again under its own id, and stays one', async () => {
  await tick('torque');
  losesAnswers = 1;
  expect(await send()).toBe('noSignal');
  expect(await send()).toBe('allSent');
  expect(asked).toEqual(['torque done', 'torque done']);
  expect([...held.values()]).toEqual(['torque done']);
});

test('a tick that a killed page had under way is sent again', async () => {
  const { order } = await tick('torque');
  await markSending(db, order);
  expect(await send()).toBe('allSent');
  expect([...held.values()]).toEqual(['torque done']);
});

test('a refused tick stays with its sentence and holds its own line of work alone', async () => {
  const message = 'This event was removed.';
  refuses = { 'torque done': { code: 'notFound', field: 'eventId', message } };
  const { order } = await tick('torque');
  await tick('torque', false);
  await tick('oil');
  await record('a note');
  expect(await send()).toBe('allSent');
  expect(asked).toEqual(['torque done', 'oil done', 'a note']);
  expect(await left()).toEqual(['torque done: refused', 'torque undone: waiting']);
  expect((await listCommands(db))[0]).toMatchObject({ refusal: { message }, mayBeDone: false });

  refuses = {};
  await askInstead(db, order, 'another', () => ({}));
  expect(await send()).toBe('allSent');
  expect(asked.slice(3)).toEqual(['torque done', 'torque undone']);
});

test('while the server fails at a tick, what was ticked later on its line waits behind it', async () => {
  await tick('torque');
  await tick('torque', false);
  await tick('oil');
  fails = new Set(['torque done']);
  expect(await send()).toBe('noSignal');
  // the last of a line decides, so none may overtake
  expect(asked).toEqual(['torque done', 'oil done']);
  fails = new Set();
  expect(await send()).toBe('allSent');
  expect([...held.values()]).toEqual(['oil done', 'torque done', 'torque undone']);
});

test('takeOut() takes one tick alone', async () => {
  const { order } = await tick('torque');
  await tick('torque', false);
  await record('a note');
  expect(await takeOut(db, order)).toBe(true);
  expect(await takeOut(db, order)).toBe(false);
  expect(await left()).toEqual(['torque undone: waiting', 'a note: waiting']);
});
