-- What falls due, item by item, and what was said of it: both written by the worker with the snapshot.
create table due_line (
  garage_id uuid not null,
  car_id uuid not null,
  item_id uuid not null,
  name text not null,
  -- null: nothing forecasts it
  state text check (state in ('unknown', 'overdue', 'dueSoon', 'fine')),
  reason_code text
    check (reason_code in ('noBaseline', 'lowerBound', 'trigger', 'asked', 'doneOnce')),
  -- with reason trigger: what happened, and its day
  cause_code text,
  cause_on date,
  -- what runs out first; amounts in km, h and counts, the unit is the one that was typed
  binding text,
  limit_amount double precision,
  remaining double precision,
  unit text check (unit in ('km', 'mi')),
  day date,
  -- false: what remains is the most that can be left
  known boolean not null,
  early date,
  likely date,
  late date,
  -- the dates lie ahead and may be said; not so of what is overdue or not wholly known
  ahead boolean not null,
  reading_needed boolean not null,
  overdue_since date,
  last_done date,
  lead_days integer not null check (lead_days >= 0),
  -- the day to order its parts by, and what else there is to say of them
  order_by date,
  parts jsonb,
  -- the car is not in use: laid up, in pieces, away or sold
  apart boolean not null,
  primary key (garage_id, car_id, item_id),
  foreign key (garage_id, car_id) references car (garage_id, id),
  foreign key (garage_id, item_id) references item (garage_id, id),
  check ((cause_code is null) = (cause_on is null))
);
--> statement-breakpoint
-- one page of a garage's list is one range of one of these; what has no day comes last
create index due_line_by_likely on due_line
  (garage_id, apart, (coalesce(least(overdue_since, likely), 'infinity')), car_id, item_id);
--> statement-breakpoint
create index due_line_by_early on due_line
  (garage_id, apart, (coalesce(least(overdue_since, early), 'infinity')), car_id, item_id);
--> statement-breakpoint
create table said (
  garage_id uuid not null,
  car_id uuid not null,
  item_id uuid not null,
  -- the Monday of its week: the first of a week stands
  week date not null check (extract(isodow from week) = 1),
  said_on date not null check (said_on between week and week + 6),
  -- the service it counts from; null for a label that was never renewed here
  since date,
  early date not null,
  likely date not null check (likely >= early),
  -- null: beyond the three years that a forecast looks ahead
  late date check (late >= likely),
  binding text,
  -- the limits it was said of, as canonical JSON: by others it cannot be judged
  limits text not null,
  engine_version integer not null check (engine_version >= 1),
  primary key (garage_id, car_id, item_id, week),
  foreign key (garage_id, car_id) references car (garage_id, id),
  foreign key (garage_id, item_id) references item (garage_id, id)
);
--> statement-breakpoint
do $$
declare
  t text;
  here constant text := 'garage_id = nullif(current_setting(''app.garage'', true), '''')::uuid';
begin
  foreach t in array array['due_line', 'said'] loop
    execute format('alter table %I enable row level security', t);
    execute format('alter table %I force row level security', t);
    execute format('create policy app_in_garage on %I for select to app using (%s)', t, here);
    execute format('create policy job_in_garage on %I for all to job using (%s) with check (%s)',
                   t, here, here);
  end loop;
end
$$;
--> statement-breakpoint
grant select on due_line, said to app;
--> statement-breakpoint
grant select, insert, update, delete on due_line to job;
--> statement-breakpoint
-- what was said is never changed or taken back
grant select, insert on said to job;
