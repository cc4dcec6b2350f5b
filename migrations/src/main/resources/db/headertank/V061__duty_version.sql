-- A shop's own duties, as the text that was written or uploaded. A change is a new row; so is switching off and on.
create table duty_version (
  id bigint generated always as identity primary key,
  shop_id bigint not null references shop (id),
  duty_id text not null check (duty_id ~ '^[A-Za-z0-9_-]{1,60}$'),
  number int not null check (number >= 1),
  csv_text text not null check (length(csv_text) <= 1000000),
  csv_sha256 bytea not null check (csv_sha256 = sha256(convert_to(csv_text, 'UTF8'))),
  active boolean not null,
  author_id bigint not null,
  saved_at timestamptz not null default now(),
  constraint duty_version_taken unique (shop_id, duty_id, number),
  foreign key (shop_id, author_id) references account (shop_id, id)
);
call make_append_only('duty_version');
