import { randomUUID } from 'node:crypto';
import { addPerson, connect, schema } from '@quartermark/db';
import { type Caller, cookieOf, type Home, PASSWORD } from './api-house.ts';

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

/** Somebody else who belongs to the garage, signed in. */
export async function joinMember(at: Home, email: string): Promise<Caller> {
  const userId = await signUpMember(at, { email });
  const db = connect(at.database.appUrl, { max: 1 });
  try {
    await db.orm
      .insert(schema.member)
      .values({ organizationId: at.garageId, userId, createdAt: new Date() });
  } finally {
    await db.close();
  }
  return at.caller(cookieOf(await at.post('/sign-in/email', { email, password: PASSWORD })));
}
