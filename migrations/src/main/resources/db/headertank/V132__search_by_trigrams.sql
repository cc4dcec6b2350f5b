-- Searching among many cars and customers: their words stand in a column of their own with an index of trigrams, from the
-- extension pg_trgm. Since PostgreSQL 13 the owner of a database may switch it on, as fuzzystrmatch (V110); where it cannot be had,
-- the same is found without an index. A word that stands somewhere as it was typed is taken at its word; only one that stands
-- nowhere may have one letter wrong.
alter table customer add column search_text text not null generated always as (lower(name || ' ' || email)) stored;
alter table car add column search_text text not null generated always as
  (lower(plate || ' ' || regexp_replace(plate, '[\s.·-]', '', 'g') || ' ' || make || ' ' || model)) stored;

create function holding(word text) returns text language sql immutable as $$
  select '%' || replace(replace(replace(word, '\', '\\'), '%', '\%'), '_', '\_') || '%'
$$;

create function has_one_letter_off(word text, among text) returns boolean language sql immutable as $$
  select exists (select 1 from regexp_split_to_table(among, '[^[:alnum:]]+') token where one_letter_off(word, token))
$$;

do $$
declare
  place name;
  threshold text := '';
  alike text := '';
begin
  begin
    create extension if not exists pg_trgm;
  exception when others then
    raise notice 'searches will have no index: %', sqlerrm;
  end;
  select n.nspname into place from pg_extension e join pg_namespace n on n.oid = e.extnamespace where e.extname = 'pg_trgm';
  if place is not null then
    execute format('create index customer_by_words on customer using gin (search_text %I.gin_trgm_ops)', place);
    execute format('create index car_by_words on car using gin (search_text %I.gin_trgm_ops)', place);
    -- One letter off in the shortest word that is forgiven leaves one of its five trigrams.
    threshold := 'set pg_trgm.word_similarity_threshold = 0.2';
    alike := format('and word operator(%I.<%%) search_text', place);
  end if;
  execute format('
    create function cars_with(shop bigint, word text) returns setof bigint language plpgsql stable rows 500 %1$s as $f$
    begin
      return query
        select id from car where shop_id = shop and search_text like holding(word)
        union
        select c.id from customer u join car c on c.customer_id = u.id
        where u.shop_id = shop and u.search_text like holding(word);
      if not found and length(word) > 3 then
        return query
          select id from car where shop_id = shop %2$s and has_one_letter_off(word, search_text)
          union
          select c.id
          from (select id, search_text from customer where shop_id = shop %2$s) u join car c on c.customer_id = u.id
          where has_one_letter_off(word, u.search_text);
      end if;
    end $f$', threshold, alike);
  execute format('
    create function customers_with(shop bigint, word text) returns setof bigint language plpgsql stable rows 500 %1$s as $f$
    begin
      return query select id from customer where shop_id = shop and search_text like holding(word);
      if not found and length(word) > 3 then
        return query select id from customer where shop_id = shop %2$s and has_one_letter_off(word, search_text);
      end if;
    end $f$', threshold, alike);
end $$;

-- Ids that every word leads to, in any order.
create function cars_found(shop bigint, words text) returns setof bigint language plpgsql stable rows 100 as $$
declare
  word text;
  all_of_them bigint[];
begin
  foreach word in array regexp_split_to_array(lower(btrim(words)), '\s+') loop
    all_of_them := case when all_of_them is null then array(select cars_with(shop, word))
                        else array(select unnest(all_of_them) intersect select cars_with(shop, word)) end;
    exit when cardinality(all_of_them) = 0;
  end loop;
  return query select unnest(all_of_them);
end $$;

create function customers_found(shop bigint, words text) returns setof bigint language plpgsql stable rows 100 as $$
declare
  word text;
  all_of_them bigint[];
begin
  foreach word in array regexp_split_to_array(lower(btrim(words)), '\s+') loop
    all_of_them := case when all_of_them is null then array(select customers_with(shop, word))
                        else array(select unnest(all_of_them) intersect select customers_with(shop, word)) end;
    exit when cardinality(all_of_them) = 0;
  end loop;
  return query select unnest(all_of_them);
end $$;
