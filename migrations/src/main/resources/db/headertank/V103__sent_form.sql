-- Each form carries a key of its own. What was said with a key is done once; the same again is answered with what it made. One
-- table for all forms: the keys that some tables have of their own are no longer written.
create table sent_form (
  shop_id bigint not null references shop (id),
  form_key uuid not null,
  said_sha256 bytea not null,                          -- of what was filled in; empty in rows from before this table
  made text not null check (btrim(made) <> ''),        -- kind of record
  made_id bigint not null,
  sent_at timestamptz not null default now(),
  primary key (shop_id, form_key, said_sha256)
);
call make_append_only('sent_form');

insert into sent_form (shop_id, form_key, said_sha256, made, made_id)
select shop_id, entry_key, ''::bytea, 'measurement', id from measurement
union all select shop_id, entry_key, ''::bytea, 'handover_photo', id from handover_photo
union all select shop_id, form_key, ''::bytea, 'handover_day', id from handover_day
union all select shop_id, form_key, ''::bytea, 'handover_decision', id from handover_decision
union all select shop_id, form_key, ''::bytea, 'check_run', id from check_run where form_key is not null
union all select shop_id, form_key, ''::bytea, 'revision', id from revision where form_key is not null
on conflict do nothing;

alter table measurement alter column entry_key drop not null;
alter table handover_photo alter column entry_key drop not null;
alter table handover_day alter column form_key drop not null;
alter table handover_decision alter column form_key drop not null;
