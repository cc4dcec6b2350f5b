-- A car that the check list sends back does not leave, whatever was signed before.
create or replace view job_stage as
select j.id, j.shop_id, j.car_id, j.asked, j.promised_on, j.closed_as, r.number as revision_number, c.id as check_run_id,
       case
         when j.closed_as is not null then j.closed_as
         when j.paused then 'PAUSED'
         when r.id is null then 'TO_DESCRIBE'
         when c.id is null or s.signed_at < j.opened_at then 'TO_RATE'
         when s.id is null then 'TO_SIGN'
         when s.decision = 'HOLD_BACK' then 'STAYS'
         when h.outcome = 'SEND_BACK' then 'SENT_BACK'
         else 'READY'
       end as stage
from job j
left join lateral (select n.id, n.number from revision n where n.car_id = j.car_id order by n.number desc limit 1) r on true
left join lateral (select k.id from check_run k where k.revision_id = r.id order by k.created_at desc, k.id desc limit 1) c
  on true
left join sign_off s on s.check_run_id = c.id
left join lateral (select d.outcome from handover_decision d where d.check_run_id = c.id order by d.id desc limit 1) h on true;
