-- Ground: sign-in tables, the garage's tables under row-level security, and the tables of the work
-- to be done. The roles app and job exist before this runs (src/roles.ts). Nothing here is newer
-- than PostgreSQL 15.
create table "user" (
  id uuid primary key default gen_random_uuid(),
  name text not null,
  email text not null unique,
  email_verified boolean not null default false,
  image text,
  created_at timestamptz not null default now(),
  updated_at timestamptz not null default now()
);
--> statement-breakpoint
create table session (
  id uuid primary key default gen_random_uuid(),
  expires_at timestamptz not null,
  token text not null unique,
  created_at timestamptz not null default now(),
  updated_at timestamptz not null,
  ip_address text,
  user_agent text,
  user_id uuid not null references "user" (id) on delete cascade,
  active_organization_id uuid
);
--> statement-breakpoint
create index session_of_user on session (user_id);
--> statement-breakpoint
create table account (
  id uuid primary key default gen_random_uuid(),
  account_id text not null,
  provider_id text not null,
  user_id uuid not null references "user" (id) on delete cascade,
  access_token text,
  refresh_token text,
  id_token text,
  access_token_expires_at timestamptz,
  refresh_token_expires_at timestamptz,
  scope text,
  password text,
  created_at timestamptz not null default now(),
  updated_at timestamptz not null
);
--> statement-breakpoint
create index account_of_user on account (user_id);
--> statement-breakpoint
create table verification (
  id uuid primary key default gen_random_uuid(),
  identifier text not null,
  value text not null,
  expires_at timestamptz not null,
  created_at timestamptz not null default now(),
  updated_at timestamptz not null default now()
);
--> statement-breakpoint
create index verification_by_identifier on verification (identifier);
--> statement-breakpoint
create table organization (
  id uuid primary key default gen_random_uuid(),
  name text not null,
  slug text not null unique,
  logo text,
  created_at timestamptz not null,
  metadata text
);
--> statement-breakpoint
create table member (
  id uuid primary key default gen_random_uuid(),
  organization_id uuid not null references organization (id) on delete cascade,
  user_id uuid not null references "user" (id) on delete cascade,
  role text not null default 'member',
  created_at timestamptz not null,
  -- somebody is a member once; also the index that withGarage reads
  unique (organization_id, user_id)
);
--> statement-breakpoint
create index member_of_user on member (user_id);
--> statement-breakpoint
create table invitation (
  id uuid primary key default gen_random_uuid(),
  organization_id uuid not null references organization (id) on delete cascade,
  email text not null,
  role text,
  status text not null default 'pending',
  expires_at timestamptz not null,
  created_at timestamptz not null default now(),
  inviter_id uuid not null references "user" (id) on delete cascade
);
--> statement-breakpoint
create index invitation_of_organization on invitation (organization_id);
--> statement-breakpoint
create index invitation_by_email on invitation (email);
--> statement-breakpoint
create table garage (
  -- a garage with a record cannot be deleted by way of its organization
  id uuid primary key references organization (id) on delete restrict,
  name text not null,
  zone text not null,
  hemisphere text check (hemisphere in ('N', 'S')),
  distance_unit text not null check (distance_unit in ('km', 'mi')),
  volume_unit text not null check (volume_unit in ('l', 'usQt', 'impQt')),
  demo boolean not null default false,
  recorded bigint not null default 0 check (recorded >= 0),
  revision integer not null default 1 check (revision >= 1),
  changed_at timestamptz not null,
  changed_by uuid not null
);
--> statement-breakpoint
create table car (
  garage_id uuid not null references garage (id),
  id uuid not null,
  name text not null,
  unit text not null check (unit in ('km', 'mi')),
  odo_digits integer check (odo_digits between 4 and 7),
  profile jsonb not null check (jsonb_typeof(profile) = 'object'),
  input_version bigint not null default 1 check (input_version >= 1),
  revision integer not null default 1 check (revision >= 1),
  added_at timestamptz not null,
  changed_at timestamptz not null,
  changed_by uuid not null,
  removed_at timestamptz,
  primary key (garage_id, id)
);
--> statement-breakpoint
create table item (
  garage_id uuid not null,
  id uuid not null,
  car_id uuid not null,
  body jsonb not null check (jsonb_typeof(body) = 'object'),
  position integer not null check (position >= 0),
  revision integer not null default 1 check (revision >= 1),
  changed_at timestamptz not null,
  changed_by uuid not null,
  removed_at timestamptz,
  primary key (garage_id, id),
  foreign key (garage_id, car_id) references car (garage_id, id)
);
--> statement-breakpoint
create index item_of_car on item (garage_id, car_id, position);
--> statement-breakpoint
create table lay_up (
  garage_id uuid not null,
  id uuid not null,
  car_id uuid not null,
  start_on date not null,
  end_on date check (end_on >= start_on),
  opened_by uuid,
  closed_by uuid,
  revision integer not null default 1 check (revision >= 1),
  removed_at timestamptz,
  primary key (garage_id, id),
  foreign key (garage_id, car_id) references car (garage_id, id)
);
--> statement-breakpoint
create index lay_up_of_car on lay_up (garage_id, car_id, start_on);
--> statement-breakpoint
create table entry (
  garage_id uuid not null references garage (id),
  id uuid not null,
  car_id uuid,
  recorded bigint not null check (recorded >= 1),
  "on" date not null,
  kind text not null,
  body jsonb not null check (jsonb_typeof(body) = 'object'),
  revision integer not null default 1 check (revision >= 1),
  recorded_at timestamptz not null,
  recorded_by uuid not null,
  removed_at timestamptz,
  primary key (garage_id, id),
  foreign key (garage_id, car_id) references car (garage_id, id),
  unique (garage_id, recorded),
  check (body ->> 'kind' = kind)
);
--> statement-breakpoint
create index entry_of_car on entry (garage_id, car_id, "on", recorded);
--> statement-breakpoint
create index entry_of_garage on entry (garage_id, "on", recorded);
--> statement-breakpoint
create table entry_revision (
  garage_id uuid not null,
  entry_id uuid not null,
  revision integer not null check (revision >= 1),
  body jsonb check (jsonb_typeof(body) = 'object'),
  at timestamptz not null,
  by uuid not null,
  command_id uuid not null,
  primary key (garage_id, entry_id, revision),
  foreign key (garage_id, entry_id) references entry (garage_id, id)
);
--> statement-breakpoint
create table command (
  garage_id uuid not null references garage (id),
  command_id uuid not null,
  verb text not null,
  payload_hash text not null,
  result jsonb not null,
  at timestamptz not null,
  by uuid not null,
  primary key (garage_id, command_id)
);
--> statement-breakpoint
create table snapshot (
  garage_id uuid not null,
  car_id uuid not null,
  input_version bigint not null check (input_version >= 1),
  engine_version integer not null check (engine_version >= 1),
  snapshot_schema integer not null check (snapshot_schema >= 1),
  as_of date not null,
  computed_at timestamptz not null,
  urgency integer not null,
  laid_up boolean not null,
  overdue integer not null check (overdue >= 0),
  due_soon integer not null check (due_soon >= 0),
  not_on_record integer not null check (not_on_record >= 0),
  -- 1 KB as compact JSON; the text form of jsonb adds a space after each colon and comma
  lane jsonb not null check (octet_length(lane::text) <= 1152),
  primary key (garage_id, car_id),
  foreign key (garage_id, car_id) references car (garage_id, id)
);
--> statement-breakpoint
create index snapshot_by_urgency on snapshot (garage_id, urgency, car_id);
--> statement-breakpoint
create table snapshot_detail (
  garage_id uuid not null,
  car_id uuid not null,
  input_version bigint not null check (input_version >= 1),
  detail jsonb not null,
  primary key (garage_id, car_id),
  foreign key (garage_id, car_id) references car (garage_id, id)
);
--> statement-breakpoint
create table failure (
  garage_id uuid not null,
  car_id uuid not null,
  since timestamptz not null,
  attempts integer not null check (attempts >= 1),
  cause text not null,
  primary key (garage_id, car_id),
  foreign key (garage_id, car_id) references car (garage_id, id)
);
--> statement-breakpoint
create table outbox (
  id bigint primary key generated always as identity,
  garage_id uuid not null,
  car_id uuid not null,
  input_version bigint not null,
  at timestamptz not null default now(),
  published_at timestamptz
);
--> statement-breakpoint
create index outbox_unpublished on outbox (id) where published_at is null;
--> statement-breakpoint
create index outbox_published on outbox (published_at) where published_at is not null;
--> statement-breakpoint
create table car_work (
  garage_id uuid not null,
  car_id uuid not null,
  wanted bigint not null check (wanted >= 1),
  done bigint not null default 0 check (done >= 0),
  done_engine integer not null default 0 check (done_engine >= 0),
  attempts integer not null default 0 check (attempts >= 0),
  next_try_at timestamptz not null default now(),
  primary key (garage_id, car_id)
);
--> statement-breakpoint
create index car_work_behind on car_work (next_try_at) where done < wanted;
--> statement-breakpoint
create index car_work_by_engine on car_work (done_engine, next_try_at);
--> statement-breakpoint
create table garage_day (
  garage_id uuid primary key,
  zone text not null,
  next_day_at timestamptz not null
);
--> statement-breakpoint
create index garage_day_due on garage_day (next_day_at);
--> statement-breakpoint
create table setup (
  id integer primary key check (id = 1),
  token_hash bytea,
  owner_at timestamptz
);
--> statement-breakpoint
insert into setup (id) values (1);
--> statement-breakpoint
-- Row-level security. Without a garage set, current_setting gives '' or null and no row is visible.
-- "force" puts the tables' owner under it too; the owner has no policy and so sees no row.
do $$
declare
  t text;
  here constant text := 'garage_id = nullif(current_setting(''app.garage'', true), '''')::uuid';
begin
  foreach t in array array['car', 'item', 'lay_up', 'entry', 'entry_revision', 'command'] loop
    execute format('create policy app_in_garage on %I for all to app using (%s) with check (%s)',
                   t, here, here);
    if t not in ('entry_revision', 'command') then
      execute format('create policy job_in_garage on %I for select to job using (%s)', t, here);
    end if;
  end loop;
  foreach t in array array['snapshot', 'snapshot_detail', 'failure'] loop
    execute format('create policy app_in_garage on %I for select to app using (%s)', t, here);
    execute format('create policy job_in_garage on %I for all to job using (%s) with check (%s)',
                   t, here, here);
  end loop;
  foreach t in array array['garage', 'car', 'item', 'lay_up', 'entry', 'entry_revision', 'command',
                           'snapshot', 'snapshot_detail', 'failure'] loop
    execute format('alter table %I enable row level security', t);
    execute format('alter table %I force row level security', t);
  end loop;
end
$$;
--> statement-breakpoint
create policy app_in_garage on garage for all to app
  using (id = nullif(current_setting('app.garage', true), '')::uuid)
  with check (id = nullif(current_setting('app.garage', true), '')::uuid);
--> statement-breakpoint
create policy job_in_garage on garage for select to job
  using (id = nullif(current_setting('app.garage', true), '')::uuid);
--> statement-breakpoint
-- The list of one's own garages, outside of any garage: read only, and only where one is a member.
create policy app_own_garages on garage for select to app
  using (exists (
    select 1 from member
    where member.organization_id = garage.id
      and member.user_id = nullif(current_setting('app.user', true), '')::uuid
  ));
--> statement-breakpoint
grant usage on schema public to app, job;
--> statement-breakpoint
grant select, insert, update, delete
  on "user", session, account, verification, organization, member, invitation to app;
--> statement-breakpoint
grant select, insert, update on garage, car, item, lay_up, entry to app;
--> statement-breakpoint
grant select, insert on entry_revision, command to app;
--> statement-breakpoint
grant select on snapshot, snapshot_detail, failure to app;
--> statement-breakpoint
grant insert on outbox to app;
--> statement-breakpoint
grant select, insert, update on car_work, garage_day to app;
--> statement-breakpoint
grant select, update on setup to app;
--> statement-breakpoint
grant select on garage, car, item, lay_up, entry to job;
--> statement-breakpoint
grant select, insert, update, delete on snapshot, snapshot_detail, failure to job;
--> statement-breakpoint
grant select, update, delete on outbox to job;
--> statement-breakpoint
grant select, insert, update, delete on car_work to job;
--> statement-breakpoint
grant select, update on garage_day to job;
