-- Somebody answers for a check, once.
create table sign_off (
  id bigint generated always as identity primary key,
  shop_id bigint not null,
  check_run_id bigint not null unique,
  signer_id bigint not null,
  decision text not null check (btrim(decision) <> ''),
  remark text not null default '',
  signed_sha256 bytea not null check (length(signed_sha256) = 32),  -- of what the signer saw
  signed_at timestamptz not null default now(),
  foreign key (shop_id, check_run_id) references check_run (shop_id, id),
  foreign key (shop_id, signer_id) references account (shop_id, id)
);
call make_append_only('sign_off');
