import path from 'node:path';
import { describe, expect, test } from 'vitest';
import { readEnv } from './env.ts';
import { projectRoot } from './project-root.ts';

const env = (given: Record<string, string>) => readEnv(given as NodeJS.ProcessEnv);

describe('readEnv()', () => {
  test('readEnv() binds this machine alone and keeps data in the visible folder unless told otherwise', () => {
    expect(env({})).toMatchObject({
      host: '127.0.0.1',
      port: 3000,
      origin: 'http://127.0.0.1:3000',
      dataDir: path.join(projectRoot, 'quartermark-data'),
      databaseUrl: null,
      redisUrl: null,
      testBuild: false,
    });
  });
  test('readEnv() takes an empty variable for one that was not given', () => {
    expect(env({ PORT: '', DATABASE_URL: ' ', TEST_BUILD: '' })).toMatchObject({
      port: 3000,
      databaseUrl: null,
      testBuild: false,
    });
  });
  test.each(['0', '65536', '3000.5', 'http', '-1'])(
    'readEnv() refuses port %s and names a good one',
    (PORT) => {
      expect(() => env({ PORT })).toThrow(
        `PORT is ${PORT}: it must be a whole number from 1 to 65535`,
      );
    },
  );
  test.each(['mysql://a:sesame@b/c', 'sesame', '127.0.0.1:5432'])(
    'readEnv() refuses %s as a database and does not repeat what may be a password',
    (DATABASE_URL) => {
      expect(() => env({ DATABASE_URL })).toThrow('DATABASE_URL cannot be read as an address');
      expect(() => env({ DATABASE_URL })).not.toThrow(/sesame/);
    },
  );
  test('readEnv() refuses a secret that is short', () => {
    expect(() => env({ QUARTERMARK_SECRET: 'x'.repeat(31) })).toThrow('it needs at least 32');
    expect(env({ QUARTERMARK_SECRET: 'x'.repeat(32) }).secret).toHaveLength(32);
  });
  test('readEnv() wants both files of HTTPS, and then an address that says so', () => {
    expect(env({}).tls).toBeNull();
    expect(env({ TLS_CERT: '/c.pem', TLS_KEY: '/k.pem' })).toMatchObject({
      tls: { certFile: '/c.pem', keyFile: '/k.pem' },
      origin: 'https://127.0.0.1:3000',
    });
    expect(() => env({ TLS_KEY: '/k.pem' })).toThrow('TLS_KEY is set and TLS_CERT is not');
    const plain = { TLS_CERT: '/c.pem', TLS_KEY: '/k.pem', QUARTERMARK_ORIGIN: 'http://a.example' };
    expect(() => env(plain)).toThrow('people open https://');
  });
});
