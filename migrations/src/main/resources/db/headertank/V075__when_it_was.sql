-- The invented shop has a past: a transaction that sets headertank.now writes its revisions, ratings and signatures as of then.
-- Nobody else sets it, and the audit trail keeps to the clock.
create function written_at() returns timestamptz language sql stable
  as $$ select coalesce(nullif(current_setting('headertank.now', true), '')::timestamptz, now()) $$;
alter table revision alter column saved_at set default written_at();
alter table check_run alter column created_at set default written_at();
alter table sign_off alter column signed_at set default written_at();
