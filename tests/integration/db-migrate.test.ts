import { readdirSync } from 'node:fs';
import { schema } from '@quartermark/db';
import { migrate, migrationsFolder } from '@quartermark/db/migrate';
import { getTableColumns, is } from 'drizzle-orm';
import { getTableConfig, PgTable } from 'drizzle-orm/pg-core';
import postgres from 'postgres';
import { afterAll, beforeAll, expect, test } from 'vitest';
import {
  APP_PASSWORD,
  bareDatabase,
  type FreshDatabase,
  freshDatabase,
  JOB_PASSWORD,
} from '../support/database.ts';

let database: FreshDatabase;
let owner: postgres.Sql;

beforeAll(async () => {
  database = await freshDatabase('db-migrate');
  owner = postgres(database.ownerUrl, { max: 1 });
});
afterAll(async () => {
  await owner.end();
  await database.drop();
});

const tables = Object.values(schema).filter((table) => is(table, PgTable));

test('migrate() may run several times at once, and again later', async () => {
  const bare = await Promise.all([bareDatabase('bare-one'), bareDatabase('bare-two')]);
  const run = ({ ownerUrl }: FreshDatabase) =>
    migrate({ ownerUrl, appPassword: APP_PASSWORD, jobPassword: JOB_PASSWORD });
  try {
    await Promise.all([...bare, ...bare, ...bare].map(run));
    await Promise.all(bare.map(run));
    for (const { ownerUrl } of bare) {
      const sql = postgres(ownerUrl, { max: 1 });
      const [row] = await sql`select count(*)::int as applied from drizzle.__drizzle_migrations`;
      await sql.end();
      const files = readdirSync(migrationsFolder()).filter((name) => name.endsWith('.sql'));
      expect(row?.applied).toBe(files.length);
    }
  } finally {
    await Promise.all(bare.map((each) => each.drop()));
  }
});

test('migrate() makes roles that neither own anything nor pass row-level security', async () => {
  const rows = await owner`
    select rolname as role, rolsuper or rolbypassrls or rolcreaterole or rolcreatedb as mighty,
      (select count(*)::int from pg_class where relowner = pg_roles.oid and relnamespace = 'public'::regnamespace) as owned
    from pg_roles where rolname in ('app', 'job') order by 1`;
  expect([...rows]).toEqual([
    { role: 'app', mighty: false, owned: 0 },
    { role: 'job', mighty: false, owned: 0 },
  ]);
});

test('schema names the columns of the database, with their types and whether they may be null', async () => {
  const found = await owner`
    select c.relname as table, a.attname as column,
      format_type(a.atttypid, null) as type, not a.attnotnull as nullable
    from pg_attribute a join pg_class c on c.oid = a.attrelid
    where c.relnamespace = 'public'::regnamespace and c.relkind = 'r'
      and a.attnum > 0 and not a.attisdropped`;
  const inDatabase = found.map((row) => `${row.table}.${row.column} ${row.type} ${row.nullable}`);
  const inSchema = tables.flatMap((table) =>
    Object.values(getTableColumns(table)).map(
      (column) =>
        `${getTableConfig(table).name}.${column.name} ${column.getSQLType()} ${!column.notNull}`,
    ),
  );
  expect(inSchema.length).toBeGreaterThan(100);
  expect(inSchema.sort()).toEqual(inDatabase.sort());
});

test('schema names the primary and unique keys that the database has', async () => {
  const found = await owner`
    select c.relname as table, (
      select array_agg(a.attname::text order by a.attname) from pg_attribute a
      where a.attrelid = c.oid and a.attnum = any(k.conkey)
    ) as columns
    from pg_constraint k join pg_class c on c.oid = k.conrelid
    where k.contype in ('p', 'u') and c.relnamespace = 'public'::regnamespace`;
  const inDatabase = found.map((row) => `${row.table} ${row.columns.join(' ')}`);
  const inSchema = tables.flatMap((table) => {
    const { name, columns, primaryKeys, uniqueConstraints } = getTableConfig(table);
    const single = columns.filter((column) => column.primary || column.isUnique);
    const several = [...primaryKeys, ...uniqueConstraints].map((key) => key.columns);
    return [...single.map((column) => [column]), ...several].map(
      (key) =>
        `${name} ${key
          .map((column) => column.name)
          .sort()
          .join(' ')}`,
    );
  });
  expect(inSchema.sort()).toEqual(inDatabase.sort());
});

test('every instant in the database has a zone', async () => {
  const rows = await owner`
    select data_type as type, count(*)::int as columns from information_schema.columns
    where table_schema = 'public' and data_type like '%time%' group by 1`;
  expect(rows.map((row) => row.type)).toEqual(['timestamp with time zone']);
  expect(rows[0]?.columns).toBeGreaterThan(20);
});

test('every table with a garage stands under forced row-level security, or holds only ids, versions and times', async () => {
  const rows = await owner`
    select c.relname as table, c.relrowsecurity and c.relforcerowsecurity as guarded
    from pg_class c
    where c.relnamespace = 'public'::regnamespace and c.relkind = 'r' and (
      c.relname = 'garage' or exists (
        select 1 from pg_attribute a where a.attrelid = c.oid and a.attname = 'garage_id'))`;
  const open = rows.filter((row) => !row.guarded).map((row) => String(row.table));
  expect(open.sort()).toEqual(['car_work', 'delivery_due', 'garage_day', 'outbox', 'secret_key']);
  expect(rows.length - open.length).toBe(30);
});
