-- Runs after all others whenever it changes. What is kept for ever, one line for each row with the hash of what stands in it. A column that comes later is not in it.
create or replace view kept_row as
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
from job_event
union all
select shop_id, 'car_log', id, kept_at, sha256(convert_to(jsonb_build_array(
         id, shop_id, car_id, name, encode(sha256(gzip), 'hex'), text_bytes, encode(text_sha256, 'hex'), reading_text, row_count,
         bad_rows, length_s, left_out, author_id, extract(epoch from kept_at))::text, 'UTF8'))
from car_log
union all
select shop_id, 'car_evidence', id, added_at, sha256(convert_to(jsonb_build_array(
         id, shop_id, car_id, revision_id, kind, log_id, said_text, author_id, extract(epoch from added_at))::text, 'UTF8'))
from car_evidence
union all
select shop_id, 'evidence_switch', id, switched_at, sha256(convert_to(jsonb_build_array(
         id, shop_id, evidence_id, used, revision_id, reason, author_id, extract(epoch from switched_at))::text, 'UTF8'))
from evidence_switch
union all
select shop_id, 'car_answer', id, answered_at, sha256(convert_to(jsonb_build_array(
         id, shop_id, car_id, question, key_text, encode(sha256(convert_to(answer_text, 'UTF8')), 'hex'),
         extract(epoch from answered_at))::text, 'UTF8'))
from car_answer
union all
select shop_id, 'incident_answer', id, answered_at, sha256(convert_to(jsonb_build_array(
         id, shop_id, incident_id, question, answer, author_id, extract(epoch from answered_at))::text, 'UTF8'))
from incident_answer;
