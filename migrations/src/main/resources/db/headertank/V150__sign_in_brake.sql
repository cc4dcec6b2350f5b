-- Who tries to sign in too often waits. One row for each place that tries, each account tried from there, each account as a whole
-- and each device that an account knows; only what was tried is counted, never what was typed.
create table sign_in_brake (
  bucket text primary key,
  tries int not null,
  until timestamptz not null,
  last_at timestamptz not null
);

-- A browser that has signed in to an account before is told apart from strangers by a random token; its hash stands here.
create table known_device (
  account_id bigint not null references account (id),
  token_sha256 bytea not null,
  last_at timestamptz not null default clock_timestamp(),
  primary key (account_id, token_sha256)
);

-- A password that the program made up is for one sign-in, and to be replaced there.
alter table account add column password_once boolean not null default false;
alter table account add column password_made_at timestamptz;
alter table account add column password_used_at timestamptz;
