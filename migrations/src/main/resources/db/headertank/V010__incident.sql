-- A car ran hot. A correction is a new row that names the one it replaces.
create table incident (
  id bigint generated always as identity primary key,
  shop_id bigint not null,
  car_id bigint not null,
  revision_id bigint not null,                         -- what was on the car that day
  compared_check_run_id bigint,                        -- the last good check it is held against, if there is one
  occurred_at timestamptz not null,
  duty text not null default '',                       -- id of a duty, when one fits
  doing text not null,                                 -- in words: queueing, third run, uphill in traffic
  ambient_k double precision check (ambient_k between 200 and 350),
  reading_k double precision not null check (reading_k between 250 and 600),
  reading_place text not null,                         -- where that gauge or sensor sits
  note text not null default '',
  reporter_id bigint not null,
  replaces_id bigint references incident (id),
  reported_at timestamptz not null default now(),
  unique (shop_id, id),
  foreign key (shop_id, car_id) references car (shop_id, id),
  foreign key (car_id, revision_id) references revision (car_id, id),
  foreign key (shop_id, compared_check_run_id) references check_run (shop_id, id),
  foreign key (shop_id, reporter_id) references account (shop_id, id)
);
create index incident_by_car on incident (car_id, occurred_at desc);
call make_append_only('incident');
