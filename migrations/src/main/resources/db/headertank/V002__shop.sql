-- A shop owns everything else; each table names its shop.
create table shop (
  id bigint generated always as identity primary key,
  name text not null check (btrim(name) <> ''),
  unit_system text not null default 'METRIC' check (unit_system in ('METRIC', 'US')),
  invented boolean not null default false,            -- true: the demo shop, nothing in it is real
  created_at timestamptz not null default now()
);
