-- The shop's own catalogue. A part that revisions name is retired, never deleted.
create table part (
  id bigint generated always as identity primary key,
  shop_id bigint not null references shop (id),
  kind text not null check (kind in ('RADIATOR', 'FAN', 'CAP', 'THERMOSTAT', 'PUMP', 'OIL_COOLER', 'SENSOR', 'CONTROLLER')),
  name text not null check (btrim(name) <> '' and length(name) <= 120),
  reference text not null default '',                  -- the maker's, as printed on the box
  values_text text not null,                           -- fields of the spec in its format, as canonical JSON
  price_minor bigint check (price_minor between 0 and 1000000000000),  -- cents and the like
  currency text not null default '' check (currency ~ '^([A-Z]{3})?$'),
  stock_note text not null default '',
  retired boolean not null default false,
  changed_at timestamptz not null default now(),
  version int not null default 0,
  unique (shop_id, id),
  check (price_minor is null or currency <> '')
);
create unique index part_by_name on part (shop_id, kind, lower(name));
