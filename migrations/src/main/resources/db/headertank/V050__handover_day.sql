-- The conditions of the workshop on one day, and what the models expect a technician to read off the car there.
create table handover_day (
  id bigint generated always as identity primary key,
  shop_id bigint not null,
  check_run_id bigint not null,
  ambient_k double precision not null check (ambient_k between 200 and 350),
  calc_core_version text not null,
  author_id bigint not null,
  form_key uuid not null,
  set_at timestamptz not null default now(),
  unique (shop_id, id),
  unique (shop_id, form_key),
  foreign key (shop_id, check_run_id) references check_run (shop_id, id),
  foreign key (shop_id, author_id) references account (shop_id, id)
);
create index handover_day_by_check on handover_day (check_run_id, id desc);
call make_append_only('handover_day');

create table expected_reading (
  handover_day_id bigint not null references handover_day (id),
  figure text not null check (btrim(figure) <> ''),
  expected double precision not null,                  -- SI
  low double precision not null,
  high double precision not null,                      -- infinite when there is no upper bound
  primary key (handover_day_id, figure),
  check (low <= expected and expected <= high)
);
call make_append_only('expected_reading');
