-- Each form that asks for a rating carries a key of its own: a form that is sent twice makes one check.
alter table check_run add column form_key uuid;
create unique index check_run_form_key on check_run (revision_id, form_key);
