-- The whole cooling spec of a car at one time, as canonical JSON text. The text is the truth, the jsonb the index.
create table revision (
  id bigint generated always as identity primary key,
  shop_id bigint not null,
  car_id bigint not null,
  number int not null,
  parent_number int,
  spec_format int not null,
  spec_text text not null,
  spec jsonb not null generated always as (spec_text::jsonb) stored,
  spec_sha256 bytea not null constraint revision_hash_fits check (spec_sha256 = sha256(convert_to(spec_text, 'UTF8'))),
  author_id bigint not null,
  reason text not null,
  saved_at timestamptz not null default now(),
  constraint revision_number_taken unique (car_id, number),
  unique (shop_id, id),
  unique (car_id, id),
  foreign key (shop_id, car_id) references car (shop_id, id),
  foreign key (shop_id, author_id) references account (shop_id, id),
  foreign key (car_id, parent_number) references revision (car_id, number),
  check (number >= 1),
  constraint revision_follows_parent check (parent_number = number - 1 or (number = 1 and parent_number is null))
);
call make_append_only('revision');
