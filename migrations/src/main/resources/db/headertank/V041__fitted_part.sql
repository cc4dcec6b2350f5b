-- Which part a revision names in which slot, with what the catalogue said of it then. What the car was given stands in the
-- revision; where the two differ, changed_fields says so.
create table fitted_part (
  revision_id bigint not null,
  slot text not null,                                  -- the kind of part: one of each on a car
  shop_id bigint not null,
  part_id bigint not null,
  part_name text not null,
  values_text text not null,
  values_sha256 bytea not null check (values_sha256 = sha256(convert_to(values_text, 'UTF8'))),
  changed_fields text not null default '',             -- keys of fields, comma-separated
  primary key (revision_id, slot),
  foreign key (shop_id, revision_id) references revision (shop_id, id),
  foreign key (shop_id, part_id) references part (shop_id, id)
);
create index fitted_part_by_part on fitted_part (part_id, revision_id);
call make_append_only('fitted_part');
