-- Whether a check answers what is asked now: not when it was signed before the job was opened, and not when a visit has ended
-- since it was made. opened is null for a car without an open job.
create function answers(which bigint, made timestamptz, signed timestamptz, opened timestamptz) returns boolean stable
language sql as $$
  select made is not null
    and not coalesce(signed < opened, false)
    and not exists (select 1 from job o
                    where o.car_id = which and o.closed_at > made
                      and (opened is null or o.closed_as = 'HANDED_OVER' or o.closed_at <= opened))
$$;

-- Where each car stands; headertank.app.gate.Standing says the same, and a test holds the two together. check_run_id is the
-- newest check of the newest revision, whether it counts or not.
create view car_standing as
select c.id as car_id, c.shop_id, r.id as revision_id, r.number as revision_number, k.id as check_run_id,
       k.created_at as rated_at, s.id as sign_off_id, s.decision, s.signed_at,
       coalesce(y.out_of_date, false) as out_of_date, o.opened_at,
       not coalesce(y.out_of_date, true) and answers(c.id, k.created_at, s.signed_at, o.opened_at) as rated,
       coalesce(d.outcome = 'DELIVER' and d.sign_off_id = s.id
                and not exists (select 1 from car_fault f where f.car_id = c.id and f.id > d.last_fault_id), false) as decided,
       d.id as decision_id,
       f.found_new, f.found_old, f.reading_new, f.reading_old, f.back_new, f.back_old
from car c
left join lateral (select n.id, n.number from revision n where n.car_id = c.id order by n.number desc limit 1) r on true
left join lateral (select q.id, q.created_at from check_run q where q.revision_id = r.id
                   order by q.created_at desc, q.id desc limit 1) k on true
left join sign_off_now s on s.check_run_id = k.id
left join check_currency y on y.check_run_id = k.id
left join lateral (select j.opened_at from job j where j.car_id = c.id and j.closed_as is null order by j.opened_at desc limit 1) o
  on true
left join lateral (select h.id, h.outcome, h.sign_off_id, h.last_fault_id from handover_decision h
                   where h.check_run_id = k.id order by h.id desc limit 1) d on true
cross join lateral (
  select count(*) filter (where x.kind = 'FOUND' and w.revision_id = r.id) as found_new,
         count(*) filter (where x.kind = 'FOUND' and w.revision_id <> r.id) as found_old,
         count(*) filter (where x.kind = 'READING' and w.revision_id = r.id) as reading_new,
         count(*) filter (where x.kind = 'READING' and w.revision_id <> r.id) as reading_old,
         count(*) filter (where x.kind = 'SENT_BACK' and w.revision_id = r.id) as back_new,
         count(*) filter (where x.kind = 'SENT_BACK' and w.revision_id <> r.id) as back_old
  from car_fault x join check_run w on w.id = x.check_run_id
  where x.car_id = c.id and not exists (select 1 from fault_clearing z where z.fault_id = x.id)) f;

drop view job_stage;
create view job_stage as
select j.id, j.shop_id, j.car_id, j.asked, j.promised_on, j.closed_as, s.revision_number, s.check_run_id,
       case
         when j.closed_as is not null then j.closed_as
         when j.paused then 'PAUSED'
         when s.revision_id is null then 'TO_DESCRIBE'
         when s.out_of_date or not answers(j.car_id, s.rated_at, s.signed_at, j.opened_at) then 'TO_RATE'
         when s.back_new + s.back_old > 0 then 'SENT_BACK'
         when s.found_new + s.found_old + s.reading_new + s.reading_old > 0 then 'FAULT_OPEN'
         when s.sign_off_id is null then 'TO_SIGN'
         when s.decision = 'HOLD_BACK' then 'STAYS'
         when not s.decided then 'TO_GO_THROUGH'
         else 'READY'
       end as stage
from job j join car_standing s on s.car_id = j.car_id;
