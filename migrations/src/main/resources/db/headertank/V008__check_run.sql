-- One rating of one revision: what went in (defaults included), what came out, and by which version of the physics.
create table check_run (
  id bigint generated always as identity primary key,
  shop_id bigint not null,
  revision_id bigint not null,
  created_at timestamptz not null default now(),
  author_id bigint not null,
  duties text not null,                                -- comma-separated ids
  calc_core_version text not null,
  rule_versions text not null,                         -- id@version, comma-separated: risk rules and plug-ins that ran
  seed bigint not null,
  input_format int not null,
  input_text text not null,
  input_sha256 bytea not null check (input_sha256 = sha256(convert_to(input_text, 'UTF8'))),
  result_format int not null,
  result_text text not null,
  result_sha256 bytea not null check (result_sha256 = sha256(convert_to(result_text, 'UTF8'))),
  unique (shop_id, id),
  foreign key (shop_id, revision_id) references revision (shop_id, id),
  foreign key (shop_id, author_id) references account (shop_id, id)
);
create index check_run_by_revision on check_run (revision_id, created_at desc);
call make_append_only('check_run');
