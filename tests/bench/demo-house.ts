import { createHash, randomBytes } from 'node:crypto';
import { type Api, createApi } from '@quartermark/api/server';
import { offerSetupToken } from '@quartermark/db/setup-token';
import type { Urls } from './database.ts';

export const SECRET = 'only-for-the-bench-and-longer-than-32-characters';
const PORT = 3000;
const ORIGIN = `http://127.0.0.1:${PORT}`;

/** The api in this process, with the demo garage: six cars with logs of up to 24 months. */
export type DemoHouse = { api: Api; cookie: string; garageId: string; close(): Promise<void> };

export async function demoHouse({ ownerUrl, appUrl }: Urls): Promise<DemoHouse> {
  const token = randomBytes(16).toString('base64url');
  await offerSetupToken(ownerUrl, createHash('sha256').update(token).digest());
  const complain = (fields: Record<string, unknown>, message: string) =>
    console.error(message, fields);
  const api = createApi({
    databaseAppUrl: appUrl,
    secret: SECRET,
    origin: ORIGIN,
    port: PORT,
    clock: { now: () => new Date() },
    testBuild: true,
    log: { warn: complain, error: complain },
  });
  const response = await api.auth.handler(
    new Request(`${ORIGIN}/api/auth/setup/demo`, {
      method: 'POST',
      headers: { 'content-type': 'application/json', origin: ORIGIN },
      body: JSON.stringify({ token }),
    }),
  );
  if (response.status !== 200) throw new Error(`no demo garage: ${await response.text()}`);
  const { garageId } = (await response.json()) as { garageId: string };
  const cookies = response.headers.getSetCookie().map((cookie) => cookie.split(';')[0]);
  return { api, cookie: cookies.join('; '), garageId, close: () => api.close() };
}
