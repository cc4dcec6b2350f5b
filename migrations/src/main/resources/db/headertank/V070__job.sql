-- What a customer asked for and until when. The stage of the work is computed (see job_stage); only a pause and the end are told.
create table job (
  id bigint generated always as identity primary key,
  shop_id bigint not null,
  car_id bigint not null,
  asked text not null check (btrim(asked) <> ''),
  promised_on date not null,
  opened_by bigint not null,
  opened_at timestamptz not null default now(),
  paused boolean not null default false,
  closed_as text check (closed_as in ('HANDED_OVER', 'CALLED_OFF')),
  version int not null default 0,
  unique (shop_id, id),
  foreign key (shop_id, car_id) references car (shop_id, id),
  foreign key (shop_id, opened_by) references account (shop_id, id),
  check (closed_as is null or not paused)
);
create index job_open on job (shop_id, promised_on, id) where closed_as is null;
create index job_by_car on job (car_id, id desc);

-- What happened to a job, by whom and why.
create table job_event (
  id bigint generated always as identity primary key,
  shop_id bigint not null,
  job_id bigint not null,
  kind text not null check (kind in ('OPENED', 'CHANGED', 'PAUSED', 'RESUMED', 'HANDED_OVER', 'CALLED_OFF')),
  asked text not null,                                 -- as it stood afterwards
  promised_on date not null,                           -- likewise
  reason text not null default '',
  account_id bigint not null,
  at timestamptz not null default now(),
  check (kind not in ('PAUSED', 'CALLED_OFF') or btrim(reason) <> ''),
  foreign key (shop_id, job_id) references job (shop_id, id),
  foreign key (shop_id, account_id) references account (shop_id, id)
);
create index job_event_by_job on job_event (job_id, id);
call make_append_only('job_event');

-- Where each job stands, from the newest revision of its car, that revision's newest check and its signature. A signature
-- older than the job answers an earlier question: the car is to be rated anew.
create view job_stage as
select j.id, j.shop_id, j.car_id, j.asked, j.promised_on, j.closed_as, r.number as revision_number, c.id as check_run_id,
       case
         when j.closed_as is not null then j.closed_as
         when j.paused then 'PAUSED'
         when r.id is null then 'TO_DESCRIBE'
         when c.id is null or s.signed_at < j.opened_at then 'TO_RATE'
         when s.id is null then 'TO_SIGN'
         when s.decision = 'HOLD_BACK' then 'STAYS'
         else 'READY'
       end as stage
from job j
left join lateral (select n.id, n.number from revision n where n.car_id = j.car_id order by n.number desc limit 1) r on true
left join lateral (select k.id from check_run k where k.revision_id = r.id order by k.created_at desc, k.id desc limit 1) c
  on true
left join sign_off s on s.check_run_id = c.id;
