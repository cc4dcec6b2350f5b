-- A car is on one visit at a time: no job opens, and none is taken back, beside an open one. Rows from before stay as they are.
create or replace function gate_new_job() returns trigger language plpgsql as $$
begin
  if new.closed_as is not null then
    perform refuse_step('a job begins open');
  end if;
  if exists (select 1 from job where car_id = new.car_id and closed_as is null) then
    perform refuse_step('the car has an open job');
  end if;
  return new;
end $$;

create or replace function gate_job() returns trigger language plpgsql as $$
begin
  if new.closed_as = 'HANDED_OVER' and old.closed_as is distinct from 'HANDED_OVER'
     and (select stage from job_stage where id = new.id) <> 'READY' then
    perform refuse_step('the car may not leave');
  end if;
  if new.closed_as is null and old.closed_as is not null
     and exists (select 1 from job where car_id = new.car_id and closed_as is null and id <> new.id) then
    perform refuse_step('the car has an open job');
  end if;
  return new;
end $$;
