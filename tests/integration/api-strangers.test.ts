// Long because every procedure that takes an id of a garage is asked here, and one that is not is seen at once.
import { randomUUID } from 'node:crypto';
import type { EntryDraft } from '@quartermark/engine/log';
import { afterAll, beforeAll, expect, test } from 'vitest';
import {
  type Caller,
  cookieOf,
  type Home,
  home,
  OWNER,
  PASSWORD,
  refused,
} from '../support/api-house.ts';
import { signUpMember } from '../support/api-stranger.ts';
import { keepLetter, workOut } from '../support/as-the-worker.ts';
import { LETTERS_OF_GARAGE, letterAskings } from '../support/letter-askings.ts';

let at: Home;
let stranger: Caller;
/** a garage, car, item and entry of the stranger's own */
let own: { garageId: string; carId: string };
const theirs = {
  itemId: randomUUID(),
  entryId: randomUUID(),
  gearId: randomUUID(),
  eventId: randomUUID(),
  layUpId: randomUUID(),
  orderId: randomUUID(),
  acceptanceId: randomUUID(),
  letterId: '',
  fact: '',
};

beforeAll(async () => {
  at = await home('api strangers');
  const itemId = theirs.itemId;
  const item = { name: 'Belts', limits: [{ measure: 'months' as const, value: 60 }] };
  await at.me.item.add({ ...command(at.garageId), carId: at.carId, itemId, item });
  await at.record(at.draft('note', { id: theirs.entryId, note: 'Private.' }));
  const { gearId, eventId } = theirs;
  await at.me.gear.add({ ...command(at.garageId), gearId, gear });
  const going = { ...event, cars: [at.carId] };
  await at.me.event.add({ ...command(at.garageId), eventId, event: going });
  await at.me.event.accept({
    ...command(at.garageId),
    acceptanceId: theirs.acceptanceId,
    acceptance: taken(eventId, at.carId),
  });
  const { layUpId, orderId } = theirs;
  const plan = { ...command(at.garageId), carId: at.carId, layUpId, layUp };
  await at.me.plannedLayUp.add(plan);
  await at.me.order.add({ ...command(at.garageId), itemId, orderId, order });
  theirs.letterId = await keepLetter(at, { email: OWNER.email, date: at.today });
  theirs.fact = await overdueFact();
  const { fact } = theirs;
  await at.me.putOff.add({ ...command(at.garageId), facts: [fact], until: '2026-06-20' });
  const email = 'stranger@elsewhere.example';
  await signUpMember(at, { email });
  stranger = at.caller(cookieOf(await at.post('/sign-in/email', { email, password: PASSWORD })));
  const made = await stranger.garage.create({
    ...command(randomUUID()),
    name: 'South shed',
    zone: 'Europe/Oslo',
    distanceUnit: 'km',
    volumeUnit: 'l',
  });
  own = { garageId: made.id, carId: randomUUID() };
  await stranger.car.add({
    ...command(own.garageId),
    carId: own.carId,
    car: { name: 'Own', unit: 'km' },
  });
});
afterAll(() => at.close());

/** Something that is so, and can be put off. */
async function overdueFact(): Promise<string> {
  const [itemId, carId] = [randomUUID(), at.carId];
  const baseline = { on: '2025-01-05', historyComplete: true };
  await at.me.item.add({ ...command(at.garageId), carId, itemId, item: { ...item, baseline } });
  await workOut(at, carId);
  return `${carId}/overdue/${itemId}:2025-01-05`;
}

const command = (garageId: string) => ({ garageId, commandId: randomUUID() });
type Ids = { garageId: string; carId: string } & typeof theirs;

const item = { name: 'Oil', limits: [{ measure: 'months' as const, value: 12 }] };
const note = (car: string, id: string = randomUUID()) => ({
  id,
  kind: 'note' as const,
  on: '2026-06-01',
  zone: 'Europe/Oslo',
  car,
  note: 'Hm.',
});
const gear = { kind: 'person' as const, name: 'Somebody' };
const event = { name: 'Meet', sort: 'meet' as const, start: '2026-07-01' };
const taken = (event: string, car: string) => ({
  event,
  car,
  need: 'odometer',
  because: 'It is known.',
});
const madeAt = '2026-06-15T10:00:00Z';
const layUp = { start: '2026-11-01' };
const order = { on: '2026-06-03' };
const settings = { name: 'x', zone: 'Europe/Oslo', distanceUnit: 'km', volumeUnit: 'l' } as const;

/** Every procedure that takes an id of a garage. */
const askings: Record<string, (ids: Ids) => Promise<unknown>> = {
  'garage.overview': ({ garageId }) => stranger.garage.overview({ garageId }),
  'garage.urgent': ({ garageId }) => stranger.garage.urgent({ garageId }),
  'garage.change': ({ garageId }) =>
    stranger.garage.change({ ...command(garageId), baseRevision: 1, ...settings }),
  'car.view': ({ garageId, carId }) => stranger.car.view({ garageId, carId }),
  'car.lastValues': ({ garageId, carId }) => stranger.car.lastValues({ garageId, carId }),
  'car.change': ({ garageId, carId }) =>
    stranger.car.change({
      ...command(garageId),
      carId,
      baseRevision: 1,
      car: { name: 'x', unit: 'km' },
    }),
  'item.add': ({ garageId, carId }) =>
    stranger.item.add({ ...command(garageId), carId, itemId: randomUUID(), item }),
  'item.change': ({ garageId, itemId }) =>
    stranger.item.change({ ...command(garageId), itemId, baseRevision: 1, item }),
  'item.remove': ({ garageId, itemId }) =>
    stranger.item.remove({ ...command(garageId), itemId, baseRevision: 1 }),
  'item.addMany': ({ garageId, carId }) =>
    stranger.item.addMany({
      ...command(garageId),
      carId,
      items: [{ itemId: randomUUID(), item }],
    }),
  'gear.list': ({ garageId }) => stranger.gear.list({ garageId }),
  'gear.view': ({ garageId, gearId }) => stranger.gear.view({ garageId, gearId }),
  'gear.add': ({ garageId }) =>
    stranger.gear.add({ ...command(garageId), gearId: randomUUID(), gear }),
  'gear.change': ({ garageId, gearId }) =>
    stranger.gear.change({ ...command(garageId), gearId, baseRevision: 1, gear }),
  'gear.remove': ({ garageId, gearId }) =>
    stranger.gear.remove({ ...command(garageId), gearId, baseRevision: 1 }),
  'event.list': ({ garageId }) => stranger.event.list({ garageId }),
  'event.propose': ({ garageId, carId }) =>
    stranger.event.propose({ garageId, carId, sort: 'circuit', days: 1 }),
  'event.unrecorded': ({ garageId }) => stranger.event.unrecorded({ garageId }),
  'event.add': ({ garageId }) =>
    stranger.event.add({ ...command(garageId), eventId: randomUUID(), event }),
  'event.change': ({ garageId, eventId }) =>
    stranger.event.change({ ...command(garageId), eventId, baseRevision: 1, event }),
  'event.remove': ({ garageId, eventId }) =>
    stranger.event.remove({ ...command(garageId), eventId, baseRevision: 1 }),
  'event.view': ({ garageId, eventId }) => stranger.event.view({ garageId, eventId }),
  'event.former': ({ garageId }) => stranger.event.former({ garageId }),
  'event.tick': ({ garageId, eventId, carId }) => {
    const tick = { tickId: randomUUID(), eventId, carId, line: 'x/oil/y', done: true, madeAt };
    return stranger.event.tick({ ...command(garageId), ...tick });
  },
  'event.accept': ({ garageId, eventId, carId }) =>
    stranger.event.accept({
      ...command(garageId),
      acceptanceId: randomUUID(),
      acceptance: taken(eventId, carId),
    }),
  'event.withdraw': ({ garageId, acceptanceId }) =>
    stranger.event.withdraw({ ...command(garageId), acceptanceId }),
  'requirements.list': ({ garageId }) => stranger.requirements.list({ garageId }),
  'requirements.change': ({ garageId }) =>
    stranger.requirements.change({
      ...command(garageId),
      use: 'meet',
      baseRevision: 0,
      requirements: null,
    }),
  'due.list': ({ garageId, carId }) => stranger.due.list({ garageId, filter: { carId } }),
  'plannedLayUp.add': ({ garageId, carId }) =>
    stranger.plannedLayUp.add({ ...command(garageId), carId, layUpId: randomUUID(), layUp }),
  'plannedLayUp.change': ({ garageId, layUpId }) =>
    stranger.plannedLayUp.change({ ...command(garageId), layUpId, baseRevision: 1, layUp }),
  'plannedLayUp.remove': ({ garageId, layUpId }) =>
    stranger.plannedLayUp.remove({ ...command(garageId), layUpId, baseRevision: 1 }),
  'order.add': ({ garageId, itemId }) =>
    stranger.order.add({ ...command(garageId), itemId, orderId: randomUUID(), order }),
  'order.change': ({ garageId, orderId }) =>
    stranger.order.change({ ...command(garageId), orderId, baseRevision: 1, order }),
  'order.remove': ({ garageId, orderId }) =>
    stranger.order.remove({ ...command(garageId), orderId, baseRevision: 1 }),
  'forecast.whatIf': ({ garageId, carId }) =>
    stranger.forecast.whatIf({ garageId, carId, added: [] }),
  'forecast.atEvents': ({ garageId, carId }) => stranger.forecast.atEvents({ garageId, carId }),
  'oil.compare': ({ garageId }) => stranger.oil.compare({ garageId }),
  'oil.past': ({ garageId, carId }) => stranger.oil.past({ garageId, carId }),
  'said.list': ({ garageId, carId }) => stranger.said.list({ garageId, carId }),
  'finding.open': ({ garageId }) => stranger.finding.open({ garageId }),
  'people.names': ({ garageId }) => stranger.people.names({ garageId }),
  ...letterAskings(() => stranger),
  'spec.view': ({ garageId, carId }) => stranger.spec.view({ garageId, carId }),
  'spec.change': ({ garageId, carId }) =>
    stranger.spec.change({ ...command(garageId), carId, baseRevision: 0, sheet: { lines: [] } }),
  'entry.record': ({ garageId, carId }) =>
    stranger.entry.record({ ...command(garageId), entry: note(carId) }),
  'entry.amend': ({ garageId, carId, entryId }) =>
    stranger.entry.amend({
      ...command(garageId),
      entryId,
      baseRevision: 1,
      entry: note(carId, entryId),
    }),
  'entry.remove': ({ garageId, entryId }) =>
    stranger.entry.remove({ ...command(garageId), entryId, baseRevision: 1 }),
  'entry.history': ({ garageId, carId }) => stranger.entry.history({ garageId, carId }),
  'entry.history of a piece': ({ garageId, gearId }) =>
    stranger.entry.history({ garageId, gearId }),
  'entry.revisions': ({ garageId, entryId }) => stranger.entry.revisions({ garageId, entryId }),
  'entry.one': ({ garageId, entryId }) => stranger.entry.one({ garageId, entryId }),
  'entry.some': ({ garageId, entryId }) => stranger.entry.some({ garageId, entryIds: [entryId] }),
  'work.retry': ({ garageId, carId }) => stranger.work.retry({ ...command(garageId), carId }),
  'live.changes': async ({ garageId }) => {
    const events = await stranger.live.changes({ garageId });
    return events[Symbol.asyncIterator]().next();
  },
};

const nowhere = (): Ids => ({
  garageId: randomUUID(),
  carId: randomUUID(),
  itemId: randomUUID(),
  entryId: randomUUID(),
  gearId: randomUUID(),
  eventId: randomUUID(),
  layUpId: randomUUID(),
  orderId: randomUUID(),
  acceptanceId: randomUUID(),
  letterId: randomUUID(),
  fact: `${randomUUID()}/overdue/${randomUUID()}:never`,
});

test.each(Object.keys(askings))(
  '%s tells a stranger of another garage what it tells of an id that does not exist',
  async (name) => {
    const ask = askings[name];
    if (!ask) throw new Error(`no asking for ${name}`);
    const real = await refused(ask({ garageId: at.garageId, carId: at.carId, ...theirs }));
    const none = await refused(ask(nowhere()));
    expect(real).toEqual(none);
    expect(real.code).toBe('notFound');
  },
);

/** Asks for a list, and leaves out what is not there instead of refusing. */
const LEAVES_OUT = 'entry.some';

/** Says that what was named is no longer so, whoever's it is. */
const REPEATS = 'putOff.add';

/** Take no id but the garage's. */
const GARAGE_ALONE = [
  'gear.list',
  'gear.add',
  'event.list',
  'event.add',
  'event.former',
  'event.unrecorded',
  'requirements.list',
  'requirements.change',
  'due.list',
  'said.list',
  'oil.compare',
  'finding.open',
  'people.names',
  ...LETTERS_OF_GARAGE,
];

test.each(
  Object.keys(askings).filter(
    (name) =>
      !/^(garage|live)\./.test(name) &&
      name !== LEAVES_OUT &&
      name !== REPEATS &&
      !GARAGE_ALONE.includes(name),
  ),
)('%s in one’s own garage tells of another garage’s ids what it tells of none', async (name) => {
  const ask = askings[name];
  if (!ask) throw new Error(`no asking for ${name}`);
  const { garageId } = own;
  const real = await refused(ask({ ...theirs, garageId, carId: at.carId }));
  const none = await refused(ask({ ...nowhere(), garageId }));
  expect(real).toEqual(none);
  expect(real.code).toBe('notFound');
});

test('entry.some in one’s own garage leaves out another garage’s entry as one that does not exist', async () => {
  const { garageId } = own;
  const ask = (entryId: string) => stranger.entry.some({ garageId, entryIds: [entryId] });
  expect(await ask(theirs.entryId)).toEqual([]);
  expect(await ask(randomUUID())).toEqual([]);
});

test('putOff.add in one’s own garage tells of another garage’s fact what it tells of none', async () => {
  const ask = (fact: string) =>
    refused(stranger.putOff.add({ ...command(own.garageId), facts: [fact], until: '2026-06-20' }));
  const real = await ask(theirs.fact);
  expect(real).toEqual(await ask(nowhere().fact));
  expect(real.code).toBe('badInput');
});

test.each(['gear', 'component', 'tyreSet', 'resolvedBy', 'event', 'notice', 'items'])(
  'an entry of one’s own that names another garage’s %s is told what it is told of none',
  async (field) => {
    const ask = (id: string) => {
      const { garageId, carId } = own;
      const base = {
        ...note(carId),
        note: undefined,
        ...naming(field, id),
      } as unknown as EntryDraft;
      return refused(stranger.entry.record({ ...command(garageId), entry: base }));
    };
    const { itemId, entryId, gearId, eventId } = theirs;
    const [theirOwn] = {
      event: [eventId],
      items: [itemId],
      resolvedBy: [entryId],
      notice: [entryId],
    }[field] ?? [gearId];
    const none = randomUUID();
    const [real, unreal] = [await ask(theirOwn ?? gearId), await ask(none)];
    // the message may repeat what was sent, and nothing else
    const plain = (refusal: unknown, id: string) => JSON.stringify(refusal).replaceAll(id, 'ID');
    expect(plain(real, theirOwn ?? gearId)).toBe(plain(unreal, none));
  },
);

function naming(field: string, id: string): Record<string, unknown> {
  switch (field) {
    case 'component':
      return { kind: 'fit', component: id, change: 'on' };
    case 'tyreSet':
    case 'event':
      return { kind: 'session', use: 'circuit', [field]: id };
    case 'resolvedBy':
      return { kind: 'finding', what: 'x', severity: 'watch', resolvedBy: id };
    case 'notice':
      return { kind: 'answer', notice: id, answer: 'x' };
    case 'items':
      return { kind: 'service', items: [id] };
    default:
      return { kind: 'note', note: 'Hm.', gear: id };
  }
}

test('every procedure of the api is asked as a stranger', () => {
  const made = Object.keys(at.api.appRouter._def.procedures);
  // of oneself, of a new thing, or open to anyone
  const without = ['setup.state', 'garage.mine', 'garage.create', 'car.add', 'pocket.sheet'];
  const asked = new Set(Object.keys(askings).map((name) => name.split(' ')[0] ?? ''));
  expect(new Set(made.filter((name) => !without.includes(name)))).toEqual(asked);
});

test('the same ids can be used in two garages, and neither learns of the other', async () => {
  const { garageId } = own;
  await stranger.car.add({
    ...command(garageId),
    carId: at.carId,
    car: { name: 'Twin', unit: 'mi' },
  });
  await stranger.item.add({ ...command(garageId), carId: at.carId, itemId: theirs.itemId, item });
  await stranger.entry.record({ ...command(garageId), entry: note(at.carId, theirs.entryId) });
  const { gearId, eventId } = theirs;
  await stranger.gear.add({ ...command(garageId), gearId, gear: { ...gear, name: 'Twin' } });
  await stranger.event.add({ ...command(garageId), eventId, event: { ...event, name: 'Twin' } });
  const { itemId, layUpId, orderId } = theirs;
  const early = { start: '2026-10-01' };
  await stranger.plannedLayUp.add({
    ...command(garageId),
    carId: at.carId,
    layUpId,
    layUp: early,
  });
  const twin = { on: '2026-06-01', what: 'Twin' };
  await stranger.order.add({ ...command(garageId), itemId, orderId, order: twin });
  await stranger.spec.change({
    ...command(garageId),
    carId: at.carId,
    baseRevision: 0,
    sheet: { lines: [{ group: 'other', what: 'Twin', value: '1' }] },
  });
  expect((await at.me.car.view({ garageId: at.garageId, carId: at.carId })).car.name).toBe(
    'Brindle 2',
  );
  const here = { garageId: at.garageId };
  expect((await at.me.gear.view({ ...here, gearId })).row.gear.name).toBe('Somebody');
  expect((await at.me.gear.list(here)).rows.map((row) => row.gear.name)).toEqual(['Somebody']);
  expect((await at.me.event.list(here)).events.map((row) => row.event.name)).toEqual(['Meet']);
  expect((await at.me.spec.view({ ...here, carId: at.carId })).revision).toBe(0);
  const view = await at.me.car.view({ ...here, carId: at.carId });
  expect(view.plannedLayUps.map((row) => row.layUp)).toEqual([layUp]);
  expect(view.orders.map((row) => row.order)).toEqual([order]);
  const mine = await at.me.entry.one({ garageId: at.garageId, entryId: theirs.entryId });
  expect(mine.entry.note).toBe('Private.');
});

test('garage.create with the id of another’s garage makes one’s own and says nothing', async () => {
  const made = await stranger.garage.create({ ...command(at.garageId), ...settings });
  expect(made.id).not.toBe(at.garageId);
  expect((await stranger.garage.mine()).map((garage) => garage.id)).not.toContain(at.garageId);
});

test('garage.create sent twice at once makes one garage', async () => {
  const input = { ...command(randomUUID()), ...settings, name: 'Twice' };
  const [one, two] = await Promise.all([
    stranger.garage.create(input),
    stranger.garage.create(input),
  ]);
  expect(two).toEqual(one);
  const named = (await stranger.garage.mine()).filter((garage) => garage.name === 'Twice');
  expect(named).toHaveLength(1);
  const other = refused(stranger.garage.create({ ...input, name: 'Thrice' }));
  expect((await other).code).toBe('commandReused');
});

test('who is signed out is asked to sign in, whatever the id', async () => {
  const nobody = at.caller();
  expect((await refused(nobody.garage.overview({ garageId: at.garageId }))).code).toBe('signedOut');
  const error = await nobody.garage.mine().catch((reason: unknown) => reason);
  expect(error).toMatchObject({ name: 'TRPCError', code: 'UNAUTHORIZED' });
});
