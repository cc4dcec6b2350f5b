-- What evidence was used when a check was rated: id@revision of each piece, in the order in which they came. A check is out of date as
-- well when other evidence is used since.
alter table check_run add column evidence text not null default '';

create or replace view check_currency as
select c.id as check_run_id, c.shop_id, r.car_id, r.number as revision_number,
       newest.number as newest_revision_number,
       newest.number > r.number as newer_revision,
       physics.newer as newer_calc_core,
       newest.number > r.number or physics.newer or policy.changed or seen.changed as out_of_date,
       concat_ws(', ',
         case when newest.number > r.number then 'NEWER_REVISION' end,
         case when physics.newer then 'NEWER_CALC_CORE' end,
         case when policy.changed then 'CHANGED_POLICY' end,
         case when seen.changed then 'CHANGED_EVIDENCE' end) as why,
       policy.changed as changed_policy,
       seen.changed as changed_evidence
from check_run c
join revision r on r.id = c.revision_id
join shop s on s.id = c.shop_id
cross join lateral (select max(n.number) as number from revision n where n.car_id = r.car_id) newest
left join calc_core_release k on true
cross join lateral (
  select coalesce(major_minor(k.version) > major_minor(c.calc_core_version), false) as newer) physics
cross join lateral (
  select coalesce(substring(c.rule_versions from '(?:^|,)standard-policy@[^,+]*\+([^,]*)'), '') <> s.thresholds
      or coalesce(substring(c.rule_versions from '(?:^|,)shop-figures@([^,]*)'), '') <> s.figures as changed) policy
cross join lateral (
  select c.evidence <> coalesce(string_agg(e.id || '@' || e.revision_id, ',' order by e.id), '') as changed
  from evidence_now e where e.shop_id = c.shop_id and e.car_id = r.car_id and e.used) seen;
