-- The whole book: components, equipment and people that own items, photos, the calendar, spec sheets.
create table gear (
  garage_id uuid not null references garage (id),
  id uuid not null,
  kind text not null check (kind in ('component', 'equipment', 'person')),
  body jsonb not null check (jsonb_typeof(body) = 'object'),
  revision integer not null default 1 check (revision >= 1),
  added_at timestamptz not null,
  changed_at timestamptz not null,
  changed_by uuid not null,
  removed_at timestamptz,
  primary key (garage_id, id),
  check (body ->> 'kind' = kind)
);
--> statement-breakpoint
alter table item
  alter column car_id drop not null,
  add column gear_id uuid,
  add foreign key (garage_id, gear_id) references gear (garage_id, id),
  add check (num_nonnulls(car_id, gear_id) = 1);
--> statement-breakpoint
create index item_of_gear on item (garage_id, gear_id, position) where gear_id is not null;
--> statement-breakpoint
alter table entry
  add column gear_id uuid,
  add foreign key (garage_id, gear_id) references gear (garage_id, id);
--> statement-breakpoint
create index entry_of_gear on entry (garage_id, gear_id, "on", recorded) where gear_id is not null;
--> statement-breakpoint
-- findings and incidents of a whole garage, with what answers them
create index entry_to_answer on entry (garage_id, "on", recorded)
  where kind in ('finding', 'incident', 'answer');
--> statement-breakpoint
create table photo (
  garage_id uuid not null references garage (id),
  id uuid not null,
  type text not null,
  width integer not null check (width >= 1),
  height integer not null check (height >= 1),
  picture bytea not null,
  small bytea not null,
  added_at timestamptz not null,
  added_by uuid not null,
  primary key (garage_id, id)
);
--> statement-breakpoint
create table event (
  garage_id uuid not null references garage (id),
  id uuid not null,
  start_on date not null,
  end_on date not null check (end_on >= start_on),
  body jsonb not null check (jsonb_typeof(body) = 'object'),
  revision integer not null default 1 check (revision >= 1),
  changed_at timestamptz not null,
  changed_by uuid not null,
  removed_at timestamptz,
  primary key (garage_id, id)
);
--> statement-breakpoint
create index event_of_garage on event (garage_id, end_on);
--> statement-breakpoint
create table spec (
  garage_id uuid not null,
  car_id uuid not null,
  body jsonb not null check (jsonb_typeof(body) = 'object'),
  revision integer not null default 1 check (revision >= 1),
  changed_at timestamptz not null,
  changed_by uuid not null,
  primary key (garage_id, car_id),
  foreign key (garage_id, car_id) references car (garage_id, id)
);
--> statement-breakpoint
-- what a car's people or its log say of it, and the worst of what forbids driving it
alter table snapshot
  add column status text not null default 'inUse'
    check (status in ('inUse', 'laidUp', 'inPieces', 'away', 'sold')),
  add column stop text
    check (stop in ('doNotDrive', 'incident', 'wheelsOff', 'wakeSteps', 'inPieces'));
--> statement-breakpoint
do $$
declare
  t text;
  here constant text := 'garage_id = nullif(current_setting(''app.garage'', true), '''')::uuid';
begin
  foreach t in array array['gear', 'photo', 'event', 'spec'] loop
    execute format('alter table %I enable row level security', t);
    execute format('alter table %I force row level security', t);
    execute format('create policy app_in_garage on %I for all to app using (%s) with check (%s)',
                   t, here, here);
  end loop;
  foreach t in array array['gear', 'event'] loop
    execute format('create policy job_in_garage on %I for select to job using (%s)', t, here);
  end loop;
end
$$;
--> statement-breakpoint
grant select, insert, update on gear, event, spec to app;
--> statement-breakpoint
-- a photo is never changed
grant select, insert on photo to app;
--> statement-breakpoint
grant select on gear, event to job;
