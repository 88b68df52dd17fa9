import 'fake-indexeddb/auto';
import type { Refusal, Written } from '@quartermark/api/client';
import { type EntryInput, entryInput } from '@quartermark/engine/log';
import { beforeEach, expect, test, vi } from 'vitest';
import { makeId } from '../../client/make-id.ts';
import { type Command, concernOf, type EntryCommand } from './command.ts';
import {
  askInstead,
  layAside,
  listCommands,
  markSending,
  photosOf,
  putInLine,
  takeOut,
  undoRecord,
  withEntry,
} from './line.ts';
import { type Doors, sendLine } from './send.ts';
import { openPocket, type PocketDb, storeTrouble } from './store.ts';

const NOW = Date.parse('2026-06-15T10:00:00Z');
let db: PocketDb;
let server: Server;
let made = 0;

beforeEach(async () => {
  db = await openPocket(`line-${made++}`);
  server = new Server();
});

/** What the real server promises of commands: asked twice, answered once. */
class Server {
  readonly asked: string[] = [];
  readonly log = new Map<string, { entry: EntryInput; revision: number; removed: boolean }>();
  readonly photos = new Set<string>();
  readonly #answers = new Map<string, Written>();
  /** by note of the entry */
  refuses: Record<string, Refusal> = {};
  signal = true;
  /** does the work and then loses the answer, that many times */
  losesAnswers = 0;
  failsWith: string | null = null;

  readonly doors: Doors = {
    knock: async () => this.#reach(),
    command: async (command) => {
      this.#reach();
      if (this.failsWith)
        throw Object.assign(new Error(this.failsWith), { data: { refusal: null } });
      const answer = this.#answers.get(command.commandId) ?? this.#work(command as EntryCommand);
      this.#answers.set(command.commandId, answer);
      if (this.losesAnswers-- > 0) throw new TypeError('fetch failed');
      return answer;
    },
    entry: async ({ entryId }) => {
      this.#reach();
      const found = this.log.get(entryId);
      if (!found) throw refused({ code: 'notFound', field: 'entryId', message: 'none' });
      return { ...found, recorded: 1, recordedAt: '', recordedBy: '' };
    },
    photo: async ({ photoId }) => {
      this.#reach();
      this.asked.push(`photo ${photoId}`);
      this.photos.add(photoId);
    },
  };

  #reach() {
    if (!this.signal) throw new TypeError('fetch failed');
  }

  #work(command: EntryCommand): Written {
    const { verb, input } = command;
    const { entry } = input;
    this.asked.push(`${verb} ${entry.note}`);
    const refusal = this.refuses[entry.note ?? ''];
    if (refusal) throw refused(refusal);
    const standing = this.log.get(entry.id);
    if (verb === 'entry.record' && standing)
      throw refused({ code: 'idInUse', field: 'entry.id', message: 'in use' });
    if (command.verb !== 'entry.record' && standing?.revision !== command.input.baseRevision)
      throw refused({ code: 'conflict', field: null, message: 'another version' });
    const revision = (standing?.revision ?? 0) + 1;
    this.log.set(entry.id, { entry, revision, removed: verb === 'entry.remove' });
    return { id: entry.id, revision, version: 1 };
  }
}

const refused = (refusal: Refusal) =>
  Object.assign(new Error(refusal.message), { data: { refusal } });

const note = (text: string, id = `id-${text}`): EntryInput =>
  entryInput.parse({ kind: 'note', id, on: '2026-06-15', zone: 'Europe/London', note: text });

const record = (text: string, id?: string) =>
  putInLine(db, {
    verb: 'entry.record',
    input: { entry: note(text, id), confirmed: [] },
    commandId: `command-${made++}`,
    garageId: 'g',
    madeAt: new Date(NOW).toISOString(),
  });

const amend = (text: string, id: string, baseRevision: number | null) =>
  putInLine(db, {
    verb: 'entry.amend',
    input: { entry: note(text, id), baseRevision, confirmed: [] },
    commandId: `command-${made++}`,
    garageId: 'g',
    madeAt: new Date(NOW).toISOString(),
  });

const send = (doors: Partial<Doors> = {}) => sendLine(db, { ...server.doors, ...doors }, () => NOW);
const states = async () => (await listCommands(db)).map(({ state }) => state);
const notes = () => [...server.log.values()].map(({ entry }) => entry.note);

test('sendLine() sends in the order of making, the photos of an entry before it', async () => {
  await record('one');
  await putInLine(
    db,
    {
      verb: 'entry.record',
      input: { entry: note('two'), confirmed: [] },
      commandId: 'two',
      garageId: 'g',
      madeAt: new Date(NOW).toISOString(),
    },
    [{ photoId: 'p', blob: new Blob(['jpeg']) }],
  );
  await record('three');
  expect(await send()).toBe('allSent');
  expect(server.asked).toEqual([
    'entry.record one',
    'photo p',
    'entry.record two',
    'entry.record three',
  ]);
  expect(await listCommands(db)).toEqual([]);
  expect(await photosOf(db, 'id-two')).toEqual([]);
});

test('sendLine() stops where no answer comes, and loses nothing', async () => {
  await record('one');
  await record('two');
  server.signal = false;
  expect(await send()).toBe('noSignal');
  // nothing was asked for, so nothing is in doubt
  expect((await listCommands(db)).map(({ tries, mayBeDone }) => [tries, mayBeDone])).toEqual([
    [0, false],
    [0, false],
  ]);
  server.signal = true;
  expect(await send()).toBe('allSent');
  expect(notes()).toEqual(['one', 'two']);
});

test('sendLine() asks again under the same id what was done but not answered', async () => {
  await record('one');
  server.losesAnswers = 1;
  expect(await send()).toBe('noSignal');
  expect(notes()).toEqual(['one']);
  expect(await send()).toBe('allSent');
  expect(server.asked).toEqual(['entry.record one']);
});

test('sendLine() sends what a killed page had under way, once', async () => {
  const { order } = await record('one');
  const command = await markSending(db, order);
  // the server did it, and the page was killed before the answer
  await server.doors.command(command as Command, false);
  expect(await states()).toEqual(['sending']);
  expect(await send()).toBe('allSent');
  expect(server.asked).toEqual(['entry.record one']);
});

test('sendLine() in two tabs at once makes one entry of each', async () => {
  await record('one');
  await record('two');
  await Promise.all([send(), send()]);
  await send();
  expect(server.asked).toEqual(['entry.record one', 'entry.record two']);
  expect(await listCommands(db)).toEqual([]);
});

test('sendLine() leaves a refused one behind with its sentence, and goes on with the others', async () => {
  const message = 'on: 2026-06-20 has not come yet.';
  server.refuses = { one: { code: 'afterTomorrow', field: 'entry.on', message } };
  const { order } = await record('one');
  await amend('one, mended', 'id-one', null);
  await record('two');
  expect(await send()).toBe('allSent');
  expect(notes()).toEqual(['two']);
  const [stuck] = await listCommands(db);
  expect(stuck).toMatchObject({ state: 'refused', mayBeDone: false, refusal: { message } });
  expect(await states()).toEqual(['refused', 'waiting']);

  server.refuses = {};
  await askInstead(db, order, 'another', (one) =>
    withEntry(one as EntryCommand, note('one, right', 'id-one')),
  );
  expect(await send()).toBe('allSent');
  // what followed on the entry rests on the revision that came of it
  expect(server.log.get('id-one')).toMatchObject({ revision: 2, entry: { note: 'one, mended' } });
});

test('sendLine() has each change of an entry rest on the one before it', async () => {
  await record('first', 'id');
  await amend('second', 'id', null);
  await amend('third', 'id', null);
  expect(await send()).toBe('allSent');
  expect(server.log.get('id')).toMatchObject({ revision: 3, entry: { note: 'third' } });
});

test('sendLine() keeps both versions of a conflict until a person decides', async () => {
  await record('one');
  await send();
  await amend('mine', 'id-one', 7);
  await send();
  expect(await states()).toEqual(['conflict']);
  const [stuck] = await listCommands(db);
  await askInstead(db, stuck?.order ?? 0, 'mine on top', (one) => ({
    input: { ...one.input, baseRevision: 1 } as never,
  }));
  expect(await send()).toBe('allSent');
  expect(notes()).toEqual(['mine']);
});

test('sendLine() waits as a whole while nobody is signed in', async () => {
  await record('one');
  await record('two');
  server.refuses = { one: { code: 'signedOut', field: null, message: 'sign in' } };
  expect(await send()).toBe('signedOut');
  expect(await states()).toEqual(['waiting', 'waiting']);
});

test('sendLine() gives a server that fails five tries, then says so and goes on', async () => {
  await record('one');
  server.failsWith = 'the server could not do its part';
  for (let pass = 1; pass <= 4; pass += 1) expect(await send()).toBe('noSignal');
  expect(await states()).toEqual(['waiting']);
  await send();
  expect((await listCommands(db))[0]).toMatchObject({
    state: 'refused',
    refusal: { code: 'serverFailed', message: 'the server could not do its part' },
  });
});

test('sendLine() amends an entry that an earlier press had brought there under another command', async () => {
  server.log.set('id-one', { entry: note('first press', 'id-one'), revision: 1, removed: false });
  await record('second press', 'id-one');
  expect(await send()).toBe('allSent');
  expect(server.log.get('id-one')).toMatchObject({ revision: 2, entry: { note: 'second press' } });
});

test('sendLine() says of what was made long ago that it waited, and of what was made now that it did not', async () => {
  await record('now');
  const said: boolean[] = [];
  const doors: Doors = {
    ...server.doors,
    command: (command, queued) => {
      said.push(queued);
      return server.doors.command(command, queued);
    },
  };
  await sendLine(db, doors, () => NOW + 1_000);
  await record('then');
  await sendLine(db, doors, () => NOW + 60_000);
  await record('without signal');
  server.signal = false;
  await sendLine(db, doors, () => NOW);
  server.signal = true;
  await sendLine(db, doors, () => NOW);
  expect(said).toEqual([false, true, true]);
});

test('layAside() keeps a photo until its entry is put in line, and lets go of one that was never saved', async () => {
  const photo = (ms: number) => ({
    photoId: makeId(ms, new Uint8Array(16)),
    garageId: 'g',
    blob: new Blob(['jpeg']),
  });
  const old = photo(NOW - 8 * 86_400_000);
  const fresh = photo(NOW);
  await layAside(db, old, NOW - 8 * 86_400_000);
  await layAside(db, fresh, NOW);
  expect((await photosOf(db, '')).map(({ photoId }) => photoId)).toEqual([fresh.photoId]);
  const entry = entryInput.parse({ ...note('one'), photos: [fresh.photoId] });
  const input = { entry, confirmed: [] };
  const madeAt = new Date(NOW).toISOString();
  await putInLine(db, { verb: 'entry.record', input, commandId: 'c', garageId: 'g', madeAt });
  expect(await send()).toBe('allSent');
  expect(server.asked).toEqual([`photo ${fresh.photoId}`, 'entry.record one']);
});

test('putInLine() keeps no half of an entry when the phone is full', async () => {
  const put = vi.spyOn(IDBObjectStore.prototype, 'put').mockImplementation(() => {
    throw Object.assign(new Error('full'), { name: 'QuotaExceededError' });
  });
  const kept = putInLine(
    db,
    {
      verb: 'entry.record',
      input: { entry: note('one'), confirmed: [] },
      commandId: 'c',
      garageId: 'g',
      madeAt: '',
    },
    [{ photoId: 'p', blob: new Blob(['x']) }],
  );
  const words = await kept.then(() => 'saved', storeTrouble);
  put.mockRestore();
  expect(words).toContain('no room left');
  expect(await listCommands(db)).toEqual([]);
});

const undoing = { commandId: 'undo', garageId: 'g', madeAt: new Date(NOW).toISOString() };

test('undoRecord() takes a waiting one out of the line, with its photo', async () => {
  const { order } = await record('one');
  expect(await undoRecord(db, order, { ...undoing, entry: note('one') })).toBe('takenOut');
  await send();
  expect(server.asked).toEqual([]);
});

test('undoRecord() sends a removal after one that was sent, or may have been', async () => {
  const sent = await record('one');
  await send();
  expect(await undoRecord(db, sent.order, { ...undoing, entry: note('one') })).toBe(
    'removalFollows',
  );
  await send();
  const unsure = await record('two');
  server.losesAnswers = 1;
  await send();
  await undoRecord(db, unsure.order, { ...undoing, commandId: 'undo 2', entry: note('two') });
  expect(await send()).toBe('allSent');
  expect([...server.log.values()].map(({ removed }) => removed)).toEqual([true, true]);
});

test('takeOut() takes what rests on a command with it', async () => {
  const { order } = await record('one');
  await amend('one, mended', 'id-one', null);
  await record('two');
  expect(await takeOut(db, order)).toBe(true);
  expect(await takeOut(db, order)).toBe(false);
  expect((await listCommands(db)).map(concernOf)).toEqual(['id-two']);
});
