-- Which paper left the shop: the hash tells whether a sheet in somebody's hand is the one that was printed here.
create table printed_sheet (
  id bigint generated always as identity primary key,
  shop_id bigint not null,
  check_run_id bigint not null,
  printed_by_id bigint not null,
  sheet_sha256 bytea not null check (length(sheet_sha256) = 32),
  printed_at timestamptz not null default now(),
  foreign key (shop_id, check_run_id) references check_run (shop_id, id),
  foreign key (shop_id, printed_by_id) references account (shop_id, id)
);
create index printed_sheet_by_check on printed_sheet (check_run_id);
call make_append_only('printed_sheet');
