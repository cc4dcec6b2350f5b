-- Which items of the check list a shop asks of a car that is rated for a duty. What no row names is asked; the newest row of a
-- duty's item counts for checks that are made after it. Leaving one out has its reason, and so has asking again.
create table asked_item (
  id bigint generated always as identity primary key,
  shop_id bigint not null references shop (id),
  duty_id text not null check (duty_id ~ '^[A-Za-z0-9_-]{1,60}$'),
  item text not null check (btrim(item) <> '' and length(item) <= 100),
  asked boolean not null,
  reason text not null check (btrim(reason) <> '' and length(reason) <= 1000),
  author_id bigint not null,
  set_at timestamptz not null default clock_timestamp(),
  foreign key (shop_id, author_id) references account (shop_id, id)
);
create index asked_item_newest on asked_item (shop_id, duty_id, item, id desc);
call make_append_only('asked_item');
