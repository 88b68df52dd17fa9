import { randomUUID } from 'node:crypto';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { cookieOf, type House, house, OWNER, PASSWORD, refused } from '../support/api-house.ts';

type Answer = {
  garageId?: string;
  refusal?: { code: string; field: string | null; message: string };
};
const read = async (response: Response) => (await response.json()) as Answer;

describe('a house without an owner', () => {
  let empty: House;
  beforeAll(async () => {
    empty = await house('api setup empty');
  });
  afterAll(() => empty.close());

  test('setup.state says that there is no owner and the demo is open', async () => {
    expect(await empty.caller().setup.state()).toEqual({
      ownerExists: false,
      demoOpen: true,
      signedIn: false,
      signedInDemo: false,
    });
  });

  test('setup/owner refuses a wrong token and says where the right one is', async () => {
    const response = await empty.post('/setup/owner', { token: 'guess', ...OWNER });
    expect(response.status).toBe(403);
    const { refusal } = await read(response);
    expect(refusal).toMatchObject({ code: 'setupToken', field: 'token' });
    expect(refusal?.message).toContain('printed each time the server starts');
    expect(response.headers.getSetCookie()).toEqual([]);
  });

  test('setup/demo refuses a wrong token', async () => {
    const response = await empty.post('/setup/demo', { token: 'guess' });
    expect(response.status).toBe(403);
  });

  test('setup/owner names field, value and mend of each bad value', async () => {
    const response = await empty.post('/setup/owner', {
      token: empty.token,
      ...OWNER,
      email: 'nobody',
      password: 'short',
      zone: 'Europe/Atlantis',
    });
    expect(response.status).toBe(400);
    const { refusal } = (await response.json()) as {
      refusal: { fields: { field: string; message: string }[] };
    };
    expect(refusal.fields.map((field) => field.field)).toEqual(['email', 'password', 'zone']);
    expect(refusal.fields.map((field) => field.message).join('\n')).toMatchInlineSnapshot(`
      "email: must be an address such as name@example.org (was "nobody")
      password: is too short; take at least 10 characters
      zone: "Europe/Atlantis" is not a time zone; use a name such as Europe/London"
    `);
  });

  test('sign-up is closed', async () => {
    const response = await empty.post('/sign-up/email', {
      name: 'Nobody',
      email: 'nobody@club.example',
      password: PASSWORD,
    });
    expect(response.status).toBe(400);
    expect(await empty.caller().setup.state()).toMatchObject({ ownerExists: false });
  });

  test('a procedure refuses who is signed out', async () => {
    const refusal = await refused(empty.caller().garage.mine());
    expect(refusal.code).toBe('signedOut');
  });
});

describe('two who want to own the house at once', () => {
  test('setup/owner lets exactly one win', async () => {
    const contested = await house('api setup contested');
    try {
      const answers = await Promise.all(
        ['one', 'two', 'three'].map((name) =>
          contested.post('/setup/owner', {
            token: contested.token,
            ...OWNER,
            email: `${name}@club.example`,
          }),
        ),
      );
      expect(answers.map((answer) => answer.status).sort((a, b) => a - b)).toEqual([200, 403, 403]);
      const winner = answers.find((answer) => answer.status === 200);
      if (!winner) throw new Error('nobody won');
      expect(await contested.caller(cookieOf(winner)).garage.mine()).toHaveLength(1);
    } finally {
      await contested.close();
    }
  });
});

describe('a house with its demo and then its owner', () => {
  let seen: House;
  let demoCookie: string;
  let demoGarage: string;
  beforeAll(async () => {
    seen = await house('api setup demo');
    const response = await seen.post('/setup/demo', { token: seen.token });
    if (response.status !== 200) throw new Error(await response.text());
    demoCookie = cookieOf(response);
    demoGarage = (await read(response)).garageId ?? '';
  });
  afterAll(() => seen.close());

  test('setup/demo opens one garage full of cars', async () => {
    const [garage, ...others] = await seen.caller(demoCookie).garage.mine();
    expect(others).toEqual([]);
    expect(garage).toMatchObject({ id: demoGarage, demo: true });
    const page = await seen.caller(demoCookie).garage.overview({ garageId: demoGarage });
    expect(page.cars).toBe(page.rows.length);
    expect(page.cars).toBeGreaterThanOrEqual(6);
  });

  test('setup/demo opened again shows the stored garage and keeps the token', async () => {
    const again = await seen.post('/setup/demo', { token: seen.token });
    expect(again.status).toBe(200);
    expect((await read(again)).garageId).toBe(demoGarage);
  });

  test('a demo visitor may record in the demo garage', async () => {
    const me = seen.caller(demoCookie);
    const { rows } = await me.garage.overview({ garageId: demoGarage });
    const carId = rows[0]?.carId ?? '';
    const [garage] = await me.garage.mine();
    const entry = {
      id: randomUUID(),
      kind: 'note' as const,
      car: carId,
      on: garage?.today ?? '',
      zone: garage?.zone ?? '',
      note: 'Tried it.',
    };
    const written = await me.entry.record({ garageId: demoGarage, commandId: randomUUID(), entry });
    expect(written.version).toBeGreaterThan(1);
  });

  test('a demo visitor can make no garage and invite nobody', async () => {
    const { name: _name, email: _email, password: _password, garageName, ...rest } = OWNER;
    const refusal = await refused(
      seen.caller(demoCookie).garage.create({
        garageId: randomUUID(),
        commandId: randomUUID(),
        name: garageName,
        ...rest,
      }),
    );
    expect(refusal.code).toBe('notAllowed');
    for (const door of ['create', 'invite-member', 'update', 'delete', 'leave']) {
      const response = await seen.post(
        `/organization/${door}`,
        {
          organizationId: demoGarage,
          email: 'friend@club.example',
          role: 'owner',
          name: 'x',
          slug: 'x',
        },
        demoCookie,
      );
      expect([door, response.status]).toEqual([door, 404]);
    }
  });

  test('creating the owner uses the token up and ends the demo', async () => {
    const response = await seen.post('/setup/owner', { token: seen.token, ...OWNER });
    expect(response.status).toBe(200);
    const owner = cookieOf(response);
    const garages = await seen.caller(owner).garage.mine();
    expect(garages.map((garage) => garage.name)).toEqual(['North shed']);

    expect((await refused(seen.caller(demoCookie).garage.mine())).code).toBe('signedOut');
    for (const door of ['/setup/demo', '/setup/owner']) {
      const late = await seen.post(door, {
        token: seen.token,
        ...(door === '/setup/owner' ? OWNER : {}),
      });
      expect(late.status).toBe(403);
      expect((await read(late)).refusal?.message).toContain('already has an owner');
    }
    const stranger = await refused(seen.caller(owner).garage.overview({ garageId: demoGarage }));
    expect(stranger.code).toBe('notFound');
  });

  test('the owner signs in again with the password, and with no other', async () => {
    const right = await seen.post('/sign-in/email', { email: OWNER.email, password: PASSWORD });
    expect(right.status).toBe(200);
    const flags = right.headers.getSetCookie().join('\n');
    expect(flags).toContain('HttpOnly');
    expect(flags).toContain('SameSite=Lax');
    const wrong = await seen.post('/sign-in/email', {
      email: OWNER.email,
      password: `${PASSWORD}!`,
    });
    expect(wrong.status).toBe(401);
  });

  test('an account door refuses a page of another origin', async () => {
    const response = await seen.api.auth.handler(
      new Request('http://127.0.0.1:3000/api/auth/sign-in/email', {
        method: 'POST',
        headers: { 'content-type': 'application/json', origin: 'http://elsewhere.example' },
        body: JSON.stringify({ email: OWNER.email, password: PASSWORD }),
      }),
    );
    expect(response.status).toBe(403);
  });
});
