-- Days and times of a shop are those of one place, whatever the machine is set to: a name of the IANA time zone database.
alter table shop add column time_zone text not null default 'UTC'
  check (time_zone ~ '^[A-Za-z0-9_+-]+(/[A-Za-z0-9_+-]+)*$' and length(time_zone) <= 60);
-- A shop that is there already has seen its times in the zone of its machine, which the program has told this session; it keeps
-- that zone, if it is one that has a name of its own.
update shop set time_zone = z.name
from pg_timezone_names z
where z.name = current_setting('TimeZone') and z.name ~ '^([A-Z][A-Za-z_]+/[A-Za-z0-9_+-]+(/[A-Za-z_]+)*|UTC)$';
