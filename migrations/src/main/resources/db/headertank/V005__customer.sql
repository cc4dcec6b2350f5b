-- Whose car it is. Names and numbers of people stand here and in account only, so that they can be erased.
create table customer (
  id bigint generated always as identity primary key,
  shop_id bigint not null references shop (id),
  name text not null check (btrim(name) <> ''),
  phone text not null default '',
  email text not null default '',
  note text not null default '',
  phone_digits text not null generated always as (regexp_replace(phone, '[^0-9]', '', 'g')) stored,
  version int not null default 0,
  created_at timestamptz not null default now(),
  unique (shop_id, id)
);
create index customer_by_name on customer (shop_id, lower(name), id);
