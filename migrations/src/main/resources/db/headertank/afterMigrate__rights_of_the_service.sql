-- Two users of the database: one owns the tables and migrates them, the other one serves the pages. The latter may add to every
-- table, and change or remove only where rows are not kept for ever; it can alter nothing, switch off no trigger and truncate
-- nothing. Runs at every start, so that a new table is covered as soon as it is there. Without a user of its own nothing is done.
do $$
declare
  service text := '${serviceUser}';
  one record;
begin
  if service = '' or service = current_user or not exists (select from pg_roles where rolname = service) then
    return;
  end if;
  execute format('grant usage on schema headertank to %I', service);
  execute format('revoke create on schema headertank from %I', service);
  for one in
    select c.oid::regclass as name, c.relkind as kind, c.relname = 'flyway_schema_history' as history,
           exists (select from pg_trigger t where t.tgrelid = c.oid and t.tgname = 'no_change') as kept
    from pg_class c where c.relnamespace = 'headertank'::regnamespace and c.relkind in ('r', 'v')
  loop
    execute format('revoke all on %s from %I', one.name, service);
    execute format('grant select on %s to %I', one.name, service);
    if one.kind = 'r' and not one.history then
      execute format('grant insert on %s to %I', one.name, service);
      if not one.kept then
        execute format('grant update, delete on %s to %I', one.name, service);
      end if;
    end if;
  end loop;
end $$;
