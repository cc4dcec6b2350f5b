-- Each form carries a key of its own: a form that is sent twice makes one revision.
alter table revision add column form_key uuid;
create unique index revision_form_key on revision (car_id, form_key);
