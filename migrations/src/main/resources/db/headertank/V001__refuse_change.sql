-- Rows that people rely on later are only ever added. Each append-only table calls this from two triggers.
create function refuse_change() returns trigger language plpgsql as $$
begin
  raise exception 'rows of % are never changed or removed; add a new row that names the old one', tg_table_name
    using errcode = '55000';
end $$;

-- The pair of triggers, so that no table forgets the second one (truncate fires no row trigger).
create procedure make_append_only(target regclass) language plpgsql as $$
begin
  execute format('create trigger no_change before update or delete on %s '
                 'for each row execute function refuse_change()', target);
  execute format('create trigger no_truncate before truncate on %s '
                 'for each statement execute function refuse_change()', target);
end $$;
