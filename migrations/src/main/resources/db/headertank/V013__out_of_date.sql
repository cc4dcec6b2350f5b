-- The newest version of the physics that has run on this database; the app raises it at start and never lowers it.
create table calc_core_release (
  only_row boolean primary key default true check (only_row),
  version text not null
);

-- '1.4.2-rc1' -> {1,4}: patch versions do not change numbers.
create function major_minor(version text) returns int[] immutable strict language sql
  return (regexp_match(version, '^(\d+)\.(\d+)'))::int[];

-- Out of date is computed, never stored. One row per check; why is empty while the check still holds.
create view check_currency as
select c.id as check_run_id, c.shop_id, r.car_id, r.number as revision_number,
       newest.number as newest_revision_number,
       newest.number > r.number as newer_revision,
       coalesce(major_minor(k.version) > major_minor(c.calc_core_version), false) as newer_calc_core,
       newest.number > r.number
         or coalesce(major_minor(k.version) > major_minor(c.calc_core_version), false) as out_of_date,
       concat_ws(', ',
         case when newest.number > r.number then 'NEWER_REVISION' end,
         case when major_minor(k.version) > major_minor(c.calc_core_version) then 'NEWER_CALC_CORE' end) as why
from check_run c
join revision r on r.id = c.revision_id
cross join lateral (select max(n.number) as number from revision n where n.car_id = r.car_id) newest
left join calc_core_release k on true;
