-- People who may sign in. An account is switched off, never deleted: revisions and sign-offs name it.
create table account (
  id bigint generated always as identity primary key,
  shop_id bigint not null references shop (id),
  login text not null check (login = lower(login) and btrim(login) <> '' and length(login) <= 100),
  name text not null check (btrim(name) <> ''),
  password_hash text not null,
  active boolean not null default true,
  version int not null default 0,
  created_at timestamptz not null default now(),
  unique (login),
  unique (shop_id, id)
);

-- Roles add up and imply nothing.
create table account_role (
  account_id bigint not null references account (id),
  role text not null check (role in ('FRONT_DESK', 'TECHNICIAN', 'OWNER')),
  primary key (account_id, role)
);
