import { randomUUID } from 'node:crypto';
import { authSchema } from '@quartermark/db';
import { betterAuth } from 'better-auth';
import { drizzleAdapter } from 'better-auth/adapters/drizzle';
import { organization } from 'better-auth/plugins';
import type { World } from '../world.ts';
import { PASSWORD_MAX, PASSWORD_MIN } from './password.ts';
import { setupPlugin } from './setup-plugin.ts';

export type AuthSettings = {
  /** signs the session cookie; at least 32 characters */
  secret: string;
  /** the address people use, such as http://127.0.0.1:3000 */
  origin: string;
  port: number;
  /** browser tests sign in more often than any person would */
  testBuild: boolean;
};

const DAY_S = 24 * 60 * 60;

/**
 * Doors of the library that this house does not use. A garage is more than an organization's row, so it
 * is made, changed and left through verbs of our own; members come in a later version.
 */
const CLOSED = [
  'create',
  'update',
  'delete',
  'leave',
  'invite-member',
  'accept-invitation',
  'reject-invitation',
  'cancel-invitation',
  'remove-member',
  'update-member-role',
  'check-slug',
].map((door) => `/organization/${door}`);

/** Accounts, sessions and memberships; nobody signs up, the owner comes by the setup token. */
export function createAuth(world: World, settings: AuthSettings) {
  return betterAuth({
    appName: 'Quartermark',
    baseURL: settings.origin,
    secret: settings.secret,
    trustedOrigins: [
      settings.origin,
      `http://127.0.0.1:${settings.port}`,
      `http://localhost:${settings.port}`,
    ],
    database: drizzleAdapter(world.db.orm, {
      provider: 'pg',
      schema: authSchema,
      transaction: true,
    }),
    emailAndPassword: {
      enabled: true,
      disableSignUp: true,
      minPasswordLength: PASSWORD_MIN,
      maxPasswordLength: PASSWORD_MAX,
    },
    disabledPaths: CLOSED,
    session: { expiresIn: 30 * DAY_S, updateAge: DAY_S, cookieCache: { enabled: false } },
    rateLimit: {
      enabled: !settings.testBuild,
      window: 60,
      max: 300,
      customRules: {
        '/sign-in/email': { window: 60, max: 10 },
        '/setup/owner': { window: 60, max: 10 },
        '/setup/demo': { window: 60, max: 10 },
      },
    },
    advanced: {
      // said outright: left out, the library drops the check wherever NODE_ENV is "test"
      disableOriginCheck: false,
      disableCSRFCheck: false,
      cookiePrefix: 'quartermark',
      database: { generateId: () => randomUUID() },
      defaultCookieAttributes: { httpOnly: true, sameSite: 'lax' },
      useSecureCookies: settings.origin.startsWith('https://'),
    },
    telemetry: { enabled: false },
    logger: {
      level: 'warn',
      log: (level, message, ...rest) =>
        world.log[level === 'error' ? 'error' : 'warn']({ rest }, message),
    },
    plugins: [organization({ allowUserToCreateOrganization: false }), setupPlugin(world)],
  });
}

export type Auth = ReturnType<typeof createAuth>;
