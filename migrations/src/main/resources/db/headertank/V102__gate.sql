-- The gate itself. Whatever moves a car towards its customer, or away from there, waits for its row in car: revision, rating,
-- signature, entry, fault, clearing, decision and the last click come one after the other, whoever sends them.
create function hold_car(which bigint) returns void language sql as $$
  select 1 from car where id = which for no key update
$$;

create function hold_car_of_check(run bigint) returns bigint language plpgsql as $$
declare found bigint;
begin
  select r.car_id into found from check_run k join revision r on r.id = k.revision_id where k.id = run;
  perform hold_car(found);
  return found;
end $$;

create function refuse_step(what text) returns void language plpgsql as $$
begin
  raise exception '%', what using errcode = '55000';
end $$;

create function one_by_one() returns trigger language plpgsql as $$
begin
  case tg_table_name
    when 'revision', 'car_fault', 'job' then perform hold_car(new.car_id);
    when 'check_run' then perform hold_car((select car_id from revision where id = new.revision_id));
    when 'fault_clearing' then perform hold_car((select car_id from car_fault where id = new.fault_id));
    else perform hold_car_of_check(new.check_run_id);
  end case;
  return new;
end $$;
create trigger a_one_by_one before insert on revision for each row execute function one_by_one();
create trigger a_one_by_one before insert on check_run for each row execute function one_by_one();
create trigger a_one_by_one before insert on sign_off for each row execute function one_by_one();
create trigger a_one_by_one before insert on measurement for each row execute function one_by_one();
create trigger a_one_by_one before insert on handover_day for each row execute function one_by_one();
create trigger a_one_by_one before insert on handover_decision for each row execute function one_by_one();
create trigger a_one_by_one before insert on car_fault for each row execute function one_by_one();
create trigger a_one_by_one before insert on fault_clearing for each row execute function one_by_one();
create trigger a_one_by_one before insert or update on job for each row execute function one_by_one();

-- A signature is about the check that counts.
create function gate_sign_off() returns trigger language plpgsql as $$
begin
  if not exists (select 1 from car_standing where check_run_id = new.check_run_id and rated) then
    perform refuse_step('the check is not the one that counts');
  end if;
  if new.replaces_id is not null
     and not exists (select 1 from sign_off s where s.id = new.replaces_id and s.check_run_id = new.check_run_id) then
    perform refuse_step('a signature replaces one of its own check');
  end if;
  return new;
end $$;
create trigger gate before insert on sign_off for each row execute function gate_sign_off();

-- No car goes on past an open fault: what is needed for "the car leaves" is looked at here once more, after the wait.
create function gate_decision() returns trigger language plpgsql as $$
declare its_car bigint; stand record; one text;
begin
  select r.car_id into its_car from check_run k join revision r on r.id = k.revision_id where k.id = new.check_run_id;
  select * into stand from car_standing where car_id = its_car;
  new.sign_off_id := null;
  new.last_fault_id := coalesce((select max(id) from car_fault where car_id = its_car), 0);
  if new.outcome <> 'DELIVER' then
    return new;
  end if;
  if stand.check_run_id is distinct from new.check_run_id or not stand.rated then
    perform refuse_step('the check is not the one that counts');
  end if;
  if stand.sign_off_id is null or stand.decision = 'HOLD_BACK' then
    perform refuse_step('nobody has signed that the car leaves');
  end if;
  if stand.found_new + stand.found_old + stand.reading_new + stand.reading_old + stand.back_new + stand.back_old > 0 then
    perform refuse_step('a fault is open');
  end if;
  if new.items = '' then
    perform refuse_step('a decision names the items of its list');
  end if;
  foreach one in array string_to_array(new.items, ',') loop
    if not exists (select 1 from measurement m where m.check_run_id = new.check_run_id and m.item = one) then
      perform refuse_step('item ' || one || ' is missing');
    end if;
  end loop;
  new.sign_off_id := stand.sign_off_id;
  return new;
end $$;
create trigger gate before insert on handover_decision for each row execute function gate_decision();

-- The last click.
create function gate_job() returns trigger language plpgsql as $$
begin
  if new.closed_as = 'HANDED_OVER' and old.closed_as is distinct from 'HANDED_OVER'
     and (select stage from job_stage where id = new.id) <> 'READY' then
    perform refuse_step('the car may not leave');
  end if;
  return new;
end $$;
create trigger gate before update on job for each row execute function gate_job();
create function gate_new_job() returns trigger language plpgsql as $$
begin
  if new.closed_as is not null then
    perform refuse_step('a job begins open');
  end if;
  return new;
end $$;
create trigger gate_new before insert on job for each row execute function gate_new_job();

-- A fault that is found on the check of a visit that has ended comes too late for the gate; the job has to be taken back first.
create function gate_fault() returns trigger language plpgsql as $$
begin
  if not exists (select 1 from job where car_id = new.car_id and closed_as is null)
     and exists (select 1 from job j join check_run k on k.id = new.check_run_id
                 where j.car_id = new.car_id and j.closed_as = 'HANDED_OVER' and j.closed_at > k.created_at) then
    perform refuse_step('the customer has the car');
  end if;
  return new;
end $$;
create trigger gate before insert on car_fault for each row execute function gate_fault();
