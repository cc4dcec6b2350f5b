-- Logs of cars: the text as it is kept (UTF-8, lines that end in a line feed, columns of a place left out unless somebody asked for
-- them), compressed by gzip, and how it was read. The hash is of the text. The same text, read the same way, is one row.
create table car_log (
  id bigint generated always as identity primary key,
  shop_id bigint not null,
  car_id bigint not null,
  name text not null check (btrim(name) <> '' and length(name) <= 200),
  gzip bytea not null check (length(gzip) between 1 and 40000000),
  text_bytes int not null check (text_bytes > 0),
  text_sha256 bytea not null check (length(text_sha256) = 32),
  reading_text text not null,
  reading jsonb not null generated always as (reading_text::jsonb) stored,
  row_count bigint not null check (row_count > 0),
  bad_rows bigint not null check (bad_rows >= 0),
  length_s double precision not null check (length_s > 0),
  left_out int not null check (left_out >= 0),        -- columns that tell where the car was
  author_id bigint not null,
  kept_at timestamptz not null default clock_timestamp(),
  unique (shop_id, id),
  unique (shop_id, car_id, text_sha256, reading_text),
  foreign key (shop_id, car_id) references car (shop_id, id),
  foreign key (shop_id, author_id) references account (shop_id, id)
);
create index car_log_by_car on car_log (shop_id, car_id, id desc);
call make_append_only('car_log');
