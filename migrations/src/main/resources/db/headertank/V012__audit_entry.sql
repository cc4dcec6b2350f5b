-- Who did what to which record. No names and no values of people in here: ids only.
create table audit_entry (
  id bigint generated always as identity primary key,
  shop_id bigint not null references shop (id),
  at timestamptz not null default now(),
  account_id bigint references account (id),           -- null: the program itself
  action text not null check (btrim(action) <> ''),    -- car.changed, account.switched-off
  subject_type text not null,
  subject_id bigint,
  detail text not null default ''
);
create index audit_entry_by_shop on audit_entry (shop_id, id desc);
create index audit_entry_by_subject on audit_entry (shop_id, subject_type, subject_id);
call make_append_only('audit_entry');
