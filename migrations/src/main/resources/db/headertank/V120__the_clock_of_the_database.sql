-- When a revision, a rating or a signature was written is what the clock says, and nothing that a session sets.
alter table revision alter column saved_at set default now();
alter table check_run alter column created_at set default now();
alter table sign_off alter column signed_at set default now();
drop function written_at();
