import postgres from 'postgres';
import { expect, test } from 'vitest';
import { freshDatabase } from '../support/database.ts';

test('freshDatabase() gives each caller migrated tables of its own, reached as owner, app and job', async () => {
  const [one, other] = await Promise.all([freshDatabase('one'), freshDatabase('other')]);
  try {
    for (const [url, user] of [
      [one.ownerUrl, 'owner'],
      [one.appUrl, 'app'],
      [other.jobUrl, 'job'],
    ] as const) {
      const sql = postgres(url, { max: 1 });
      const [row] =
        await sql`select current_user as who, (select count(*)::int from outbox) as rows`.catch(
          (error: Error) => [{ who: error.message, rows: null }],
        );
      await sql.end();
      // the web app may write the outbox but not read it
      expect(row).toEqual(
        user === 'app'
          ? { who: 'permission denied for table outbox', rows: null }
          : { who: user, rows: 0 },
      );
    }
    expect(one.ownerUrl).not.toBe(other.ownerUrl);
  } finally {
    await one.drop();
    await other.drop();
  }
});
