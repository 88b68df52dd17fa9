import { randomUUID } from 'node:crypto';
import { addPerson, endDemoSessions, findSetup, useUpToken, withSetupLock } from '@quartermark/db';
import { shortText } from '@quartermark/engine/log';
import { z } from 'zod';
import { password } from '../auth/password.ts';
import { garageFields } from '../garage/fields.ts';
import { foundGarage } from '../garage/found.ts';
import type { World } from '../world.ts';
import { checkToken } from './token.ts';

const { name: garageName, ...garageRest } = garageFields;

export const setupToken = z
  .string()
  .min(1, 'is missing; take it from where the server was started')
  .max(200);

export const setupOwnerInput = z.strictObject({
  token: setupToken,
  name: shortText,
  email: z.email('must be an address such as name@example.org').max(254),
  password,
  garageName,
  ...garageRest,
});

/**
 * Makes the owner and the first garage, and closes the door behind itself: the token is used up and the
 * demo's sessions end, all in one transaction under a lock, so of two who try at once one is refused.
 *
 * @param passwordHash hash of `input.password`, made before the lock is taken because it is slow
 */
export async function setupOwner(
  world: World,
  input: z.output<typeof setupOwnerInput>,
  passwordHash: string,
): Promise<{ userId: string; garageId: string }> {
  const { token, name, email, password: _password, garageName, ...rest } = input;
  const now = world.clock.now();
  const userId = randomUUID();
  const garageId = randomUUID();
  await withSetupLock(world.db, async (tx) => {
    checkToken(token, await findSetup(tx));
    await addPerson(tx, { id: userId, name, email: email.toLowerCase(), passwordHash, now });
    const founder = { userId, role: 'owner', demo: false, now };
    if (!(await foundGarage(tx, garageId, { name: garageName, ...rest }, founder)))
      throw new Error(`could not make garage ${garageId}: its id is taken`);
    await useUpToken(tx, now);
    await endDemoSessions(tx);
  });
  return { userId, garageId };
}
