-- The nightly letter: who wants what, the letters as composed, what leaves the house, and private addresses.
-- What a member wants of the letters of a garage; no row: the usual.
create table letter_setting (
  garage_id uuid not null references garage (id),
  user_id uuid not null,
  body jsonb not null check (jsonb_typeof(body) = 'object'),
  revision integer not null default 1 check (revision >= 1),
  changed_at timestamptz not null,
  changed_by uuid not null,
  primary key (garage_id, user_id)
);
--> statement-breakpoint
-- The garage's hour, its mail server and its webhook.
create table post_setting (
  garage_id uuid primary key references garage (id),
  -- minute of the day by the garage's clocks
  send_minute integer not null default 360 check (send_minute between 0 and 1439),
  -- without the password; null: no mail is sent
  mail jsonb check (jsonb_typeof(mail) = 'object'),
  mail_password text,
  -- what may be known of it
  has_password boolean not null generated always as (mail_password is not null) stored,
  -- null: nothing is posted
  hook_url text,
  hook_secret text,
  revision integer not null default 1 check (revision >= 1),
  changed_at timestamptz not null,
  changed_by uuid not null,
  check ((hook_url is null) = (hook_secret is null))
);
--> statement-breakpoint
-- One row for each civil date a garage has had its letters for, silent ones included: the truth about a night.
create table digest (
  garage_id uuid not null references garage (id),
  date date not null,
  composed_at timestamptz not null,
  send_at timestamptz not null,
  -- nights before it that nobody composed in
  missed integer not null default 0 check (missed >= 0),
  primary key (garage_id, date)
);
--> statement-breakpoint
create table letter (
  garage_id uuid not null,
  id uuid not null,
  date date not null,
  -- whose it is
  user_id uuid not null,
  -- the letter, and what it said, for the next one
  body jsonb not null check (jsonb_typeof(body) = 'object'),
  said jsonb not null check (jsonb_typeof(said) = 'array'),
  -- as they leave the house
  text text not null,
  html text not null,
  -- stands in its address to unsubscribe; null: none was offered
  unsubscribe_secret text,
  read_at timestamptz,
  primary key (garage_id, id),
  unique (garage_id, date, user_id),
  foreign key (garage_id, date) references digest (garage_id, date)
);
--> statement-breakpoint
create index letter_of_member on letter (garage_id, user_id, date);
--> statement-breakpoint
-- What leaves the house: a letter, a test letter, or a webhook. It is tried until it is delivered or given up.
create table delivery (
  garage_id uuid not null references garage (id),
  id uuid not null,
  kind text not null check (kind in ('letter', 'test', 'hook')),
  -- of a letter
  letter_id uuid,
  -- of a webhook: what is posted
  payload jsonb check (jsonb_typeof(payload) = 'object'),
  -- the mailbox it goes to; null: a webhook
  to_address text,
  message_id text,
  state text not null default 'waiting' check (state in ('waiting', 'delivered', 'givenUp')),
  tries integer not null default 0 check (tries >= 0),
  -- what the server said last, at most 200 characters
  words text,
  -- some try ended without an answer, so a second copy may have come; it has the same Message-ID
  answer_lost boolean not null default false,
  made_at timestamptz not null,
  -- who asked for a test letter
  made_by uuid,
  settled_at timestamptz,
  primary key (garage_id, id),
  foreign key (garage_id, letter_id) references letter (garage_id, id),
  check ((kind = 'letter') = (letter_id is not null)),
  check ((kind = 'hook') = (payload is not null)),
  check ((kind = 'hook') = (to_address is null)),
  check ((to_address is null) = (message_id is null)),
  check ((state = 'waiting') = (settled_at is null))
);
--> statement-breakpoint
-- a letter leaves once
create unique index delivery_of_letter on delivery (garage_id, letter_id) where letter_id is not null;
--> statement-breakpoint
create index delivery_by_time on delivery (garage_id, made_at);
--> statement-breakpoint
-- A fact of which nobody wants to hear up to a day.
create table put_off (
  garage_id uuid not null references garage (id),
  -- id of the fact
  fact text not null check (octet_length(fact) between 1 and 400),
  until date not null,
  -- as bad as it was then: worse is told all the same
  grade integer not null check (grade >= 0),
  put_at timestamptz not null,
  put_by uuid not null,
  primary key (garage_id, fact)
);
--> statement-breakpoint
-- A member's private calendar address; its secret stands nowhere.
create table feed (
  garage_id uuid not null references garage (id),
  id uuid not null,
  user_id uuid not null,
  made_at timestamptz not null,
  revoked_at timestamptz,
  primary key (garage_id, id)
);
--> statement-breakpoint
-- a member has one at a time
create unique index feed_standing on feed (garage_id, user_id) where revoked_at is null;
--> statement-breakpoint
-- What calendars were told of an entry, so that a change is known as one.
create table feed_published (
  garage_id uuid not null,
  feed_id uuid not null,
  uid text not null,
  print text not null,
  sequence integer not null check (sequence >= 0),
  modified_at timestamptz not null,
  primary key (garage_id, feed_id, uid),
  foreign key (garage_id, feed_id) references feed (garage_id, id)
);
--> statement-breakpoint
-- Outside of row-level security: ids, times and hashes alone. What is to leave the house, and when it is tried next.
create table delivery_due (
  id uuid primary key,
  garage_id uuid not null,
  due_at timestamptz not null
);
--> statement-breakpoint
create index delivery_due_by_time on delivery_due (due_at);
--> statement-breakpoint
-- Addresses that need no sign-in: whose garage and what they open, by the SHA-256 of their secret.
create table secret_key (
  hash text primary key check (hash ~ '^[0-9a-f]{64}$'),
  kind text not null check (kind in ('feed', 'unsubscribe')),
  garage_id uuid not null,
  user_id uuid not null,
  -- the feed or the letter
  subject_id uuid not null
);
--> statement-breakpoint
create index secret_key_of_subject on secret_key (garage_id, subject_id);
--> statement-breakpoint
alter table garage_day
  -- the latest civil date that has had its letters; null: none yet
  add column letter_date date,
  -- from when on the next letters may be composed
  add column compose_at timestamptz not null default to_timestamp(0);
--> statement-breakpoint
create index garage_day_to_compose on garage_day (compose_at);
--> statement-breakpoint
do $$
declare
  t text;
  here constant text := 'garage_id = nullif(current_setting(''app.garage'', true), '''')::uuid';
begin
  foreach t in array array['letter_setting', 'post_setting', 'digest', 'letter', 'delivery', 'put_off',
                           'feed', 'feed_published'] loop
    execute format('alter table %I enable row level security', t);
    execute format('alter table %I force row level security', t);
    execute format('create policy app_in_garage on %I for all to app using (%s) with check (%s)',
                   t, here, here);
  end loop;
  foreach t in array array['letter_setting', 'post_setting', 'put_off', 'acceptance'] loop
    execute format('create policy job_in_garage on %I for select to job using (%s)', t, here);
  end loop;
  foreach t in array array['digest', 'letter', 'delivery'] loop
    execute format('create policy job_in_garage on %I for all to job using (%s) with check (%s)',
                   t, here, here);
  end loop;
end
$$;
--> statement-breakpoint
grant select, insert, update on letter_setting, put_off, feed, feed_published to app;
--> statement-breakpoint
-- a password and a webhook's secret go in and never come out
grant select (garage_id, send_minute, mail, has_password, hook_url, revision, changed_at, changed_by), insert, update
  on post_setting to app;
--> statement-breakpoint
grant select on digest to app;
--> statement-breakpoint
grant select (garage_id, id, date, user_id, body, said, text, html, read_at), update (read_at) on letter to app;
--> statement-breakpoint
grant select, insert on delivery to app;
--> statement-breakpoint
grant select, insert on delivery_due to app;
--> statement-breakpoint
grant select, insert, delete on secret_key to app;
--> statement-breakpoint
grant select on letter_setting, post_setting, put_off, acceptance, member to job;
--> statement-breakpoint
grant select (id, name, email) on "user" to job;
--> statement-breakpoint
grant select, insert, update on digest, letter, delivery to job;
--> statement-breakpoint
grant select, insert, update, delete on delivery_due to job;
--> statement-breakpoint
grant insert on secret_key to job;
