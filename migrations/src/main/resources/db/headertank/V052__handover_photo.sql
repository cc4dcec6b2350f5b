-- Pictures that belong to items of the check list: made anew from what was sent, so that they carry no place and no device.
create table handover_photo (
  id bigint generated always as identity primary key,
  shop_id bigint not null,
  check_run_id bigint not null,
  item text not null check (btrim(item) <> '' and length(item) <= 100),
  caption text not null check (btrim(caption) <> '' and length(caption) <= 300),
  width int not null check (width > 0),
  height int not null check (height > 0),
  jpeg bytea not null check (length(jpeg) between 1 and 4194304),
  small_jpeg bytea not null check (length(small_jpeg) between 1 and 524288),
  author_id bigint not null,
  entry_key uuid not null,
  stored_at timestamptz not null default now(),
  unique (shop_id, entry_key),
  foreign key (shop_id, check_run_id) references check_run (shop_id, id),
  foreign key (shop_id, author_id) references account (shop_id, id)
);
create index handover_photo_by_check on handover_photo (check_run_id, id);
call make_append_only('handover_photo');
