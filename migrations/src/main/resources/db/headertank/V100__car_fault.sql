-- What stands between a car and its customer. A fault belongs to the car and stays open from check to check until it is cleared.
create table car_fault (
  id bigint generated always as identity primary key,
  shop_id bigint not null,
  car_id bigint not null,
  check_run_id bigint not null,                        -- on whose check list it was found
  kind text not null check (kind in ('FOUND', 'READING', 'SENT_BACK')),
  item text not null default '',                       -- of the check list; empty when the whole car was sent back
  measurement_id bigint references measurement (id),   -- the entry that says so; none when the car was sent back
  note text not null default '',                       -- in words
  value_si double precision,                           -- a reading, and what it was held against then (SI)
  expected_si double precision,
  low_si double precision,
  high_si double precision,
  author_id bigint not null,
  opened_at timestamptz not null default clock_timestamp(),
  unique (shop_id, id),
  check ((kind = 'SENT_BACK') = (item = '')),
  check ((kind = 'SENT_BACK') = (measurement_id is null)),
  check (kind = 'READING' or btrim(note) <> ''),
  check ((kind = 'READING') = (value_si is not null)),
  check (kind <> 'READING' or (expected_si is not null and low_si is not null and high_si is not null)),
  foreign key (shop_id, car_id) references car (shop_id, id),
  foreign key (shop_id, check_run_id) references check_run (shop_id, id),
  foreign key (shop_id, author_id) references account (shop_id, id)
);
create index car_fault_by_car on car_fault (car_id, id);
create unique index car_fault_by_measurement on car_fault (measurement_id);
call make_append_only('car_fault');

-- Why a fault no longer stands in the way, and who says so. Once for each fault.
create table fault_clearing (
  id bigint generated always as identity primary key,
  shop_id bigint not null,
  fault_id bigint not null unique,
  how text not null check (how in ('READING', 'REVISION', 'REASON')),
  measurement_id bigint references measurement (id),   -- the reading within what is expected
  revision_id bigint,                                  -- the newer revision that puts it right
  reason text not null default '',
  author_id bigint not null,
  cleared_at timestamptz not null default clock_timestamp(),
  check ((how = 'READING') = (measurement_id is not null)),
  check ((how = 'REVISION') = (revision_id is not null)),
  check (how <> 'REASON' or btrim(reason) <> ''),
  foreign key (shop_id, fault_id) references car_fault (shop_id, id),
  foreign key (shop_id, revision_id) references revision (shop_id, id),
  foreign key (shop_id, author_id) references account (shop_id, id)
);
call make_append_only('fault_clearing');

-- What stood open before there was this table stays open.
insert into car_fault (shop_id, car_id, check_run_id, kind, item, measurement_id, note, author_id, opened_at)
select shop_id, car_id, check_run_id, 'FOUND', item, id, note, author_id, stored_at
from (select distinct on (r.car_id, m.item) m.*, r.car_id
      from measurement m join check_run c on c.id = m.check_run_id join revision r on r.id = c.revision_id
      order by r.car_id, m.item, m.id desc) newest
where outcome = 'FAULT';
insert into car_fault (shop_id, car_id, check_run_id, kind, note, author_id, opened_at)
select shop_id, car_id, check_run_id, 'SENT_BACK', reason, author_id, decided_at
from (select distinct on (r.car_id) d.*, r.car_id
      from handover_decision d join check_run c on c.id = d.check_run_id join revision r on r.id = c.revision_id
      order by r.car_id, d.id desc) newest
where outcome = 'SEND_BACK';

-- A signature may be followed by another that replaces it; the newest counts.
alter table sign_off drop constraint sign_off_check_run_id_key;
alter table sign_off add column replaces_id bigint references sign_off (id);
create unique index sign_off_first on sign_off (check_run_id) where replaces_id is null;
create unique index sign_off_replaced on sign_off (replaces_id);
create index sign_off_by_check on sign_off (check_run_id);
create view sign_off_now as
select s.* from sign_off s where not exists (select 1 from sign_off n where n.replaces_id = s.id);

-- "The car leaves" holds as long as it is about this signature and no fault has come since; every item has its answer then.
alter table handover_decision
  add column items text not null default '',           -- keys of all items of the list, comma-separated
  add column sign_off_id bigint references sign_off (id),
  add column last_fault_id bigint not null default 0;  -- the car's newest fault then

-- When a job was closed: what was rated before belongs to that visit.
alter table job add column closed_at timestamptz;
update job j set closed_at = (select max(e.at) from job_event e where e.job_id = j.id and e.kind in ('HANDED_OVER', 'CALLED_OFF'))
where closed_as is not null;
update job set closed_at = opened_at where closed_as is not null and closed_at is null;
alter table job add constraint job_closed_when check ((closed_as is null) = (closed_at is null));
alter table job_event drop constraint job_event_kind_check;
alter table job_event add constraint job_event_kind_check
  check (kind in ('OPENED', 'CHANGED', 'PAUSED', 'RESUMED', 'HANDED_OVER', 'TAKEN_BACK', 'CALLED_OFF'));
alter table job_event drop constraint job_event_check;
alter table job_event add constraint job_event_reason
  check (kind not in ('PAUSED', 'CALLED_OFF', 'TAKEN_BACK') or btrim(reason) <> '');
