-- A car as the shop knows it. What cools it is in its revisions.
create table car (
  id bigint generated always as identity primary key,
  shop_id bigint not null,
  customer_id bigint not null,
  plate text not null check (btrim(plate) <> ''),
  make text not null default '',
  model text not null default '',
  model_year int check (model_year between 1900 and 2100),
  note text not null default '',
  plate_key text not null                              -- for searching: no spaces, no hyphens, capitals
    generated always as (upper(regexp_replace(plate, '[\s.·-]', '', 'g'))) stored,
  version int not null default 0,
  created_at timestamptz not null default now(),
  unique (shop_id, id),
  foreign key (shop_id, customer_id) references customer (shop_id, id)
);
create index car_by_plate on car (shop_id, plate_key, id);
create index car_by_customer on car (customer_id);
