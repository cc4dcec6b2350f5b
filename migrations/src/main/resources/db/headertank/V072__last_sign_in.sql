-- When somebody last signed in, for the owner's list of accounts.
alter table account add column last_sign_in_at timestamptz;
