import { createHash, randomBytes, randomUUID } from 'node:crypto';
import {
  type Api,
  appRouter,
  createApi,
  createCallerFactory,
  refusalOf,
} from '@quartermark/api/server';
import { offerSetupToken } from '@quartermark/db/setup-token';
import type { EntryDraft } from '@quartermark/engine/log';
import { type FreshDatabase, freshDatabase } from './database.ts';

const PORT = 3000;
export const ORIGIN = `http://127.0.0.1:${PORT}`;
export const SECRET = 'only-for-tests-and-longer-than-32-characters';
export const PASSWORD = 'correct horse battery';

const makeCaller = createCallerFactory(appRouter);
export type Caller = ReturnType<typeof makeCaller>;

/** The api on a database of its own, as the web process makes it. */
export type House = {
  api: Api;
  database: FreshDatabase;
  /** the valid setup token */
  token: string;
  logged: { fields: Record<string, unknown>; message: string }[];
  post(path: string, body: unknown, cookie?: string): Promise<Response>;
  caller(cookie?: string): Caller;
  close(): Promise<void>;
};

export async function house(name: string, now: () => Date = () => new Date()): Promise<House> {
  const database = await freshDatabase(name);
  const token = randomBytes(16).toString('base64url');
  const tokenHash = createHash('sha256').update(token).digest();
  if (!(await offerSetupToken(database.ownerUrl, tokenHash))) throw new Error('there is an owner');
  const logged: House['logged'] = [];
  const write = (fields: Record<string, unknown>, message: string) => {
    logged.push({ fields, message });
  };
  const api = createApi({
    databaseAppUrl: database.appUrl,
    secret: SECRET,
    origin: ORIGIN,
    port: PORT,
    clock: { now },
    testBuild: true,
    log: { warn: write, error: write },
  });
  return {
    api,
    database,
    token,
    logged,
    post: (path, body, cookie) =>
      api.auth.handler(
        new Request(`${ORIGIN}/api/auth${path}`, {
          method: 'POST',
          headers: {
            'content-type': 'application/json',
            origin: ORIGIN,
            ...(cookie ? { cookie } : {}),
          },
          body: JSON.stringify(body),
        }),
      ),
    caller: (cookie) =>
      makeCaller(api.createContext({ headers: new Headers(cookie ? { cookie } : {}) })),
    async close() {
      await api.close();
      await database.drop();
    },
  };
}

export function cookieOf(response: Response): string {
  return response.headers
    .getSetCookie()
    .map((cookie) => cookie.split(';')[0])
    .join('; ');
}

export const OWNER = {
  name: 'Ada Fern',
  email: 'ada@club.example',
  password: PASSWORD,
  garageName: 'North shed',
  zone: 'Europe/London',
  hemisphere: 'N',
  distanceUnit: 'mi',
  volumeUnit: 'usQt',
} as const;

/** A house with its owner, one garage and one car. */
export type Home = House & {
  cookie: string;
  me: Caller;
  garageId: string;
  carId: string;
  today: string;
  /** an entry of the car, today, with what is given on top */
  draft<K extends EntryDraft['kind']>(
    kind: K,
    more: Omit<Extract<EntryDraft, { kind: K }>, 'kind' | 'id' | 'on' | 'zone' | 'car'> &
      Partial<Pick<EntryDraft, 'id' | 'on' | 'car'>>,
  ): EntryDraft;
  record(
    entry: EntryDraft,
    more?: {
      commandId?: string;
      confirmed?: ('odometerBackwards' | 'orderUnclear' | 'looksTheSame')[];
      queued?: boolean;
    },
  ): Promise<{ id: string; revision: number; version: number }>;
};

export async function home(name: string): Promise<Home> {
  const now = new Date('2026-06-15T10:00:00Z');
  // the sign-in library reads the real clock for its sessions; the garage lives on this day
  const made = await house(name, () => now);
  const response = await made.post('/setup/owner', { token: made.token, ...OWNER });
  if (response.status !== 200) throw new Error(await response.text());
  const cookie = cookieOf(response);
  const { garageId } = (await response.json()) as { garageId: string };
  const me = made.caller(cookie);
  const carId = randomUUID();
  await me.car.add({
    garageId,
    commandId: randomUUID(),
    carId,
    car: { name: 'Brindle 2', unit: 'km' },
  });
  return {
    ...made,
    cookie,
    me,
    garageId,
    carId,
    today: '2026-06-15',
    draft: (kind, more) =>
      ({
        id: randomUUID(),
        kind,
        on: '2026-06-15',
        zone: 'Europe/London',
        car: carId,
        ...more,
      }) as EntryDraft,
    record: (entry, more = {}) =>
      me.entry.record({ garageId, commandId: randomUUID(), entry, ...more }),
  };
}

/** What was refused. Fails if nothing was, or if it failed for another reason. */
export async function refused(asking: Promise<unknown>) {
  const error = await asking.then(
    () => null,
    (reason: unknown) => reason,
  );
  const refusal = refusalOf(error);
  if (!refusal)
    throw new Error('expected a refusal, got an answer or another error', { cause: error });
  return refusal;
}
