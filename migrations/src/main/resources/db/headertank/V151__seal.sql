-- What is kept for ever, one line for each row with the hash of what stands in it. A column that comes later is not in it.
create view kept_row as
select shop_id, 'audit_entry' as kind, id, at, sha256(convert_to(jsonb_build_array(
         id, shop_id, extract(epoch from at), account_id, action, subject_type, subject_id, detail)::text, 'UTF8')) as sha256
from audit_entry
union all
select shop_id, 'revision', id, saved_at, sha256(convert_to(jsonb_build_array(
         id, shop_id, car_id, number, parent_number, spec_format, encode(sha256(convert_to(spec_text, 'UTF8')), 'hex'),
         author_id, reason, extract(epoch from saved_at))::text, 'UTF8'))
from revision
union all
select shop_id, 'check_run', id, created_at, sha256(convert_to(jsonb_build_array(
         id, shop_id, revision_id, extract(epoch from created_at), author_id, duties, calc_core_version, rule_versions, seed,
         encode(sha256(convert_to(input_text, 'UTF8')), 'hex'),
         encode(sha256(convert_to(result_text, 'UTF8')), 'hex'))::text, 'UTF8'))
from check_run
union all
select shop_id, 'sign_off', id, signed_at, sha256(convert_to(jsonb_build_array(
         id, shop_id, check_run_id, signer_id, decision, remark, conditions, encode(signed_sha256, 'hex'),
         extract(epoch from signed_at), replaces_id)::text, 'UTF8'))
from sign_off
union all
select shop_id, 'printed_sheet', id, printed_at, sha256(convert_to(jsonb_build_array(
         id, shop_id, check_run_id, printed_by_id, encode(sheet_sha256, 'hex'), extract(epoch from printed_at))::text, 'UTF8'))
from printed_sheet
union all
select shop_id, 'measurement', id, stored_at, sha256(convert_to(jsonb_build_array(
         id, shop_id, check_run_id, item, outcome, value_si, typed, note, author_id, extract(epoch from stored_at))::text,
         'UTF8'))
from measurement
union all
select shop_id, 'handover_photo', id, stored_at, sha256(convert_to(jsonb_build_array(
         id, shop_id, check_run_id, item, caption, encode(sha256(jpeg), 'hex'), author_id,
         extract(epoch from stored_at))::text, 'UTF8'))
from handover_photo
union all
select shop_id, 'handover_decision', id, decided_at, sha256(convert_to(jsonb_build_array(
         id, shop_id, check_run_id, outcome, reason, author_id, extract(epoch from decided_at))::text, 'UTF8'))
from handover_decision
union all
select shop_id, 'job_event', id, at, sha256(convert_to(jsonb_build_array(
         id, shop_id, job_id, kind, asked, promised_on, reason, account_id, extract(epoch from at))::text, 'UTF8'))
from job_event;

-- A seal holds the hashes of up to a thousand such rows and the hash of the seal before it, so that neither a row nor a seal can be
-- changed or taken away without the chain saying so.
create table seal (
  id bigint generated always as identity primary key,
  shop_id bigint not null references shop (id),
  sealed_at timestamptz not null default clock_timestamp(),
  kinds text[] not null,
  ids bigint[] not null,
  hashes bytea[] not null,
  sha256 bytea not null check (length(sha256) = 32),
  check (cardinality(kinds) = cardinality(ids) and cardinality(ids) = cardinality(hashes) and cardinality(ids) > 0)
);
create index seal_by_shop on seal (shop_id, id);
call make_append_only('seal');
