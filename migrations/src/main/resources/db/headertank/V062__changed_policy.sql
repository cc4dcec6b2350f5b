-- A check is out of date as well when the shop has since moved the thresholds or the limits that it was judged by. What it was
-- judged by stands in its rule_versions: standard-policy@1+NAME=number..., shop-figures@name=number...
create or replace view check_currency as
select c.id as check_run_id, c.shop_id, r.car_id, r.number as revision_number,
       newest.number as newest_revision_number,
       newest.number > r.number as newer_revision,
       physics.newer as newer_calc_core,
       newest.number > r.number or physics.newer or policy.changed as out_of_date,
       concat_ws(', ',
         case when newest.number > r.number then 'NEWER_REVISION' end,
         case when physics.newer then 'NEWER_CALC_CORE' end,
         case when policy.changed then 'CHANGED_POLICY' end) as why,
       policy.changed as changed_policy
from check_run c
join revision r on r.id = c.revision_id
join shop s on s.id = c.shop_id
cross join lateral (select max(n.number) as number from revision n where n.car_id = r.car_id) newest
left join calc_core_release k on true
cross join lateral (
  select coalesce(major_minor(k.version) > major_minor(c.calc_core_version), false) as newer) physics
cross join lateral (
  select coalesce(substring(c.rule_versions from '(?:^|,)standard-policy@[^,+]*\+([^,]*)'), '') <> s.thresholds
      or coalesce(substring(c.rule_versions from '(?:^|,)shop-figures@([^,]*)'), '') <> s.figures as changed) policy;
