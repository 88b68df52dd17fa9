import { randomUUID } from 'node:crypto';
import {
  addPerson,
  DEMO_ROLE,
  findDemo,
  findSetup,
  lockGarage,
  type Tx,
  withSetupLock,
} from '@quartermark/db';
import { todayIn } from '@quartermark/engine/calendar';
import { wantRecompute } from '@quartermark/jobs/outbox';
import { demoGarage } from '@quartermark/seed';
import { z } from 'zod';
import { foundGarage } from '../garage/found.ts';
import { setupToken } from '../setup/owner.ts';
import { checkToken } from '../setup/token.ts';
import type { World } from '../world.ts';
import { load } from './load.ts';

export const openDemoInput = z.strictObject({ token: setupToken });

export type OpenedDemo = { userId: string; garageId: string };

/**
 * Opens the demo garage, and fills it the first time. The token stays valid: trying the demo is no reason
 * to lose the way to one's own garage. Whoever comes in this way has no password and can enter no other
 * garage; once the house has an owner the demo is closed.
 */
export function openDemo(
  world: World,
  { token }: z.output<typeof openDemoInput>,
): Promise<OpenedDemo> {
  return withSetupLock(world.db, async (tx) => {
    checkToken(token, await findSetup(tx));
    return (await findDemo(tx)) ?? (await fill(world, tx));
  });
}

async function fill(world: World, tx: Tx): Promise<OpenedDemo> {
  const now = world.clock.now();
  const userId = randomUUID();
  const garageId = randomUUID();
  await addPerson(tx, {
    id: userId,
    name: 'Demo visitor',
    // not an address: example.invalid resolves nowhere (RFC 2606)
    email: `demo-${userId}@example.invalid`,
    passwordHash: null,
    now,
  });
  const { zone } = demoGarage(todayIn(now, 'UTC')).garage;
  const seed = demoGarage(todayIn(now, zone));
  await foundGarage(tx, garageId, seed.garage, { userId, role: DEMO_ROLE, demo: true, now });
  const garage = await lockGarage(tx, garageId);
  await load({ tx, garage, now, by: userId, role: DEMO_ROLE, commandId: randomUUID() }, seed);
  await wantRecompute(tx, garageId, 'all');
  return { userId, garageId };
}
