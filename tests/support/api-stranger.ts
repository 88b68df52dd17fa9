import { randomUUID } from 'node:crypto';
import { addPerson, connect } from '@quartermark/db';
import { type Home, PASSWORD } from './api-house.ts';

/** Somebody with an account and no garage: sign-up is closed, so the row is written by hand. */
export async function signUpMember(at: Home, { email }: { email: string }): Promise<string> {
  const id = randomUUID();
  const db = connect(at.database.appUrl, { max: 1 });
  try {
    const passwordHash = await (await at.api.auth.$context).password.hash(PASSWORD);
    await db.orm.transaction((tx) =>
      addPerson(tx, { id, name: 'Odd Holm', email, passwordHash, now: new Date() }),
    );
  } finally {
    await db.close();
  }
  return id;
}
