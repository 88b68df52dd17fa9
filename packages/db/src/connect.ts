import { drizzle, type PostgresJsDatabase } from 'drizzle-orm/postgres-js';
import postgres from 'postgres';
import * as authSchema from './auth-schema.ts';
import * as dueTables from './due-schema.ts';
import * as letterTables from './letter-schema.ts';
import * as oilTables from './oil-schema.ts';
import * as readinessTables from './readiness-schema.ts';
import * as tables from './schema.ts';

export { authSchema };
export const schema = {
  ...authSchema,
  ...tables,
  ...dueTables,
  ...oilTables,
  ...readinessTables,
  ...letterTables,
};
export type Schema = typeof schema;
export type Orm = PostgresJsDatabase<Schema>;

/** A transaction. Everything that reads or writes a garage's tables takes one, from `withGarage`. */
export type Tx = Parameters<Parameters<Orm['transaction']>[0]>[0];

/** A pool of connections. Nothing is opened before the first query. */
export type Db = {
  readonly orm: Orm;
  readonly url: string;
  /** Waits up to five seconds for running queries, then closes. */
  close(): Promise<void>;
};

export type ConnectOptions = {
  /** the most connections held open */
  max: number;
  /** act as this role from the start, where the login role is a member of it */
  role?: 'app' | 'job';
  /** shown in pg_stat_activity */
  name?: string;
};

export function connect(url: string, options: ConnectOptions): Db {
  const client = postgres(url, {
    max: options.max,
    fetch_types: false,
    onnotice: () => {},
    connection: {
      application_name: options.name ?? 'quartermark',
      ...(options.role ? { role: options.role } : {}),
    },
  });
  return {
    orm: drizzle(client, { schema }),
    url,
    close: () => client.end({ timeout: 5 }),
  };
}
