-- What a car's oil is compared with others by; written by the worker with the snapshot.
create table oil_line (
  garage_id uuid not null,
  car_id uuid not null,
  -- how much can be said; none: too few readings, then all rates are null
  status text not null check (status in ('ok', 'weak', 'none')),
  -- what it asks for before the engine runs again; null: nothing
  stop text check (stop in ('none', 'low', 'over', 'look')),
  -- likely level, fraction of the way from MIN to MAX, and the ends of its band
  level_low double precision,
  level_likely double precision check (level_likely between level_low and level_high),
  level_high double precision,
  -- rates in L/1,000 km, likely and the ends of their bands
  road_low double precision,
  road_likely double precision check (road_likely between road_low and road_high),
  road_high double precision,
  hard_low double precision,
  hard_likely double precision check (hard_likely between hard_low and hard_high),
  hard_high double precision,
  -- the same civil date a year before; null: nothing on record from then
  ago_on date,
  ago_road_low double precision,
  ago_road_likely double precision,
  ago_road_high double precision,
  ago_hard_low double precision,
  ago_hard_likely double precision,
  ago_hard_high double precision,
  -- the road rate as a multiple of that a year before
  change_low double precision,
  change_likely double precision check (change_likely between change_low and change_high),
  change_high double precision,
  rise text check (rise in ('risen', 'watch')),
  primary key (garage_id, car_id),
  foreign key (garage_id, car_id) references car (garage_id, id),
  check ((road_likely is null) = (status = 'none'))
);
--> statement-breakpoint
do $$
declare
  here constant text := 'garage_id = nullif(current_setting(''app.garage'', true), '''')::uuid';
begin
  alter table oil_line enable row level security;
  alter table oil_line force row level security;
  execute format('create policy app_in_garage on oil_line for select to app using (%s)', here);
  execute format('create policy job_in_garage on oil_line for all to job using (%s) with check (%s)',
                 here, here);
end
$$;
--> statement-breakpoint
grant select on oil_line to app;
--> statement-breakpoint
grant select, insert, update, delete on oil_line to job;
