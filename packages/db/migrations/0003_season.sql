-- The season as data: lay-ups that are meant to come, and parts that were ordered.
create table planned_lay_up (
  garage_id uuid not null,
  id uuid not null,
  car_id uuid not null,
  start_on date not null,
  end_on date check (end_on >= start_on),
  revision integer not null default 1 check (revision >= 1),
  changed_at timestamptz not null,
  changed_by uuid not null,
  removed_at timestamptz,
  primary key (garage_id, id),
  foreign key (garage_id, car_id) references car (garage_id, id)
);
--> statement-breakpoint
create index planned_lay_up_of_car on planned_lay_up (garage_id, car_id, start_on);
--> statement-breakpoint
create table part_order (
  garage_id uuid not null,
  id uuid not null,
  item_id uuid not null,
  body jsonb not null check (jsonb_typeof(body) = 'object'),
  revision integer not null default 1 check (revision >= 1),
  changed_at timestamptz not null,
  changed_by uuid not null,
  removed_at timestamptz,
  primary key (garage_id, id),
  foreign key (garage_id, item_id) references item (garage_id, id)
);
--> statement-breakpoint
create index part_order_of_item on part_order (garage_id, item_id);
--> statement-breakpoint
do $$
declare
  t text;
  here constant text := 'garage_id = nullif(current_setting(''app.garage'', true), '''')::uuid';
begin
  foreach t in array array['planned_lay_up', 'part_order'] loop
    execute format('alter table %I enable row level security', t);
    execute format('alter table %I force row level security', t);
    execute format('create policy app_in_garage on %I for all to app using (%s) with check (%s)',
                   t, here, here);
    execute format('create policy job_in_garage on %I for select to job using (%s)', t, here);
  end loop;
end
$$;
--> statement-breakpoint
grant select, insert, update on planned_lay_up, part_order to app;
--> statement-breakpoint
grant select on planned_lay_up, part_order to job;
