-- Readiness: what a garage asks, needs that somebody took upon himself, and ticks on an event's list of work.
create table requirement_set (
  garage_id uuid not null references garage (id),
  use text not null
    check (use in ('road', 'meet', 'roadTrip', 'circuit', 'dragStrip', 'autocross')),
  -- null: the usual ones again
  body jsonb check (jsonb_typeof(body) = 'object'),
  revision integer not null default 1 check (revision >= 1),
  changed_at timestamptz not null,
  changed_by uuid not null,
  primary key (garage_id, use)
);
--> statement-breakpoint
create table acceptance (
  garage_id uuid not null,
  id uuid not null,
  event_id uuid not null,
  car_id uuid not null,
  -- id of the need
  need text not null,
  because text not null,
  accepted_at timestamptz not null,
  accepted_by uuid not null,
  withdrawn_at timestamptz,
  withdrawn_by uuid,
  primary key (garage_id, id),
  foreign key (garage_id, event_id) references event (garage_id, id),
  foreign key (garage_id, car_id) references car (garage_id, id),
  check ((withdrawn_at is null) = (withdrawn_by is null))
);
--> statement-breakpoint
-- a need is taken upon oneself once at a time
create unique index acceptance_standing on acceptance (garage_id, event_id, car_id, need)
  where withdrawn_at is null;
--> statement-breakpoint
create table work_tick (
  garage_id uuid not null,
  id uuid not null,
  event_id uuid not null,
  -- null: a line of the event itself, of no car
  car_id uuid,
  line text not null,
  done boolean not null,
  -- by the device's clock; it may have waited for a signal
  made_at timestamptz not null,
  at timestamptz not null,
  by uuid not null,
  primary key (garage_id, id),
  foreign key (garage_id, event_id) references event (garage_id, id),
  foreign key (garage_id, car_id) references car (garage_id, id)
);
--> statement-breakpoint
create index work_tick_of_event on work_tick (garage_id, event_id, at);
--> statement-breakpoint
-- parts that were ever on a car, and where else they were
create index entry_fit on entry (garage_id, car_id) where kind = 'fit';
--> statement-breakpoint
-- readiness for the road, on the day of the analysis; null: not in use
alter table snapshot_detail add column road jsonb check (jsonb_typeof(road) = 'object');
--> statement-breakpoint
-- 1 KB as compact JSON; its text has a space more for each colon and comma, and there are more of these now
alter table snapshot
  drop constraint snapshot_lane_check,
  add constraint snapshot_lane_check check (octet_length(lane::text) <= 1216);
--> statement-breakpoint
do $$
declare
  t text;
  here constant text := 'garage_id = nullif(current_setting(''app.garage'', true), '''')::uuid';
begin
  foreach t in array array['requirement_set', 'acceptance', 'work_tick'] loop
    execute format('alter table %I enable row level security', t);
    execute format('alter table %I force row level security', t);
    execute format('create policy app_in_garage on %I for all to app using (%s) with check (%s)',
                   t, here, here);
  end loop;
  execute format('create policy job_in_garage on requirement_set for select to job using (%s)', here);
end
$$;
--> statement-breakpoint
grant select, insert, update on requirement_set to app;
--> statement-breakpoint
-- what was accepted stays as it was said; it is withdrawn, never deleted
grant select, insert, update (withdrawn_at, withdrawn_by) on acceptance to app;
--> statement-breakpoint
-- what was ticked is never changed or taken back: the next tick of the line decides
grant select, insert on work_tick to app;
--> statement-breakpoint
grant select on requirement_set to job;
