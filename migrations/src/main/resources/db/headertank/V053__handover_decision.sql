-- The car leaves, or goes back with a reason. The newest row of a check counts.
create table handover_decision (
  id bigint generated always as identity primary key,
  shop_id bigint not null,
  check_run_id bigint not null,
  outcome text not null check (outcome in ('DELIVER', 'SEND_BACK')),
  reason text not null default '',
  author_id bigint not null,
  form_key uuid not null,
  decided_at timestamptz not null default now(),
  unique (shop_id, form_key),
  check (outcome <> 'SEND_BACK' or btrim(reason) <> ''),
  foreign key (shop_id, check_run_id) references check_run (shop_id, id),
  foreign key (shop_id, author_id) references account (shop_id, id)
);
create index handover_decision_by_check on handover_decision (check_run_id, id desc);
call make_append_only('handover_decision');

-- Items that were still open then; a car that leaves has a reason for each.
create table handover_open_item (
  handover_decision_id bigint not null references handover_decision (id),
  item text not null check (btrim(item) <> ''),
  reason text not null default '',
  primary key (handover_decision_id, item)
);
call make_append_only('handover_open_item');
