-- What a technician did, saw or measured for one item of the check list. The newest row of an item counts.
create table measurement (
  id bigint generated always as identity primary key,
  shop_id bigint not null,
  check_run_id bigint not null,
  item text not null check (btrim(item) <> '' and length(item) <= 100),
  outcome text not null check (outcome in ('DONE', 'MEASURED', 'FAULT', 'NOT_APPLICABLE')),
  value_si double precision,
  typed text not null default '',                      -- as it was typed, with its unit
  note text not null default '',
  author_id bigint not null,
  entry_key uuid not null,                             -- an entry that is sent twice is stored once
  stored_at timestamptz not null default now(),
  unique (shop_id, entry_key),
  check ((outcome = 'MEASURED') = (value_si is not null)),
  check (outcome not in ('FAULT', 'NOT_APPLICABLE') or btrim(note) <> ''),
  foreign key (shop_id, check_run_id) references check_run (shop_id, id),
  foreign key (shop_id, author_id) references account (shop_id, id)
);
create index measurement_by_check on measurement (check_run_id, item, id desc);
call make_append_only('measurement');
