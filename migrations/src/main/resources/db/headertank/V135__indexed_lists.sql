-- Jobs, parts and hot reports are found as cars are (V132): by words that stand in columns with an index of trigrams, a job and a
-- report by those of its car and its customer as well.
alter table job add column search_text text not null generated always as (lower(asked)) stored;
alter table incident add column search_text text not null generated always as (lower(doing || ' ' || note)) stored;
alter table part add column search_text text not null generated always as
  (lower(name || ' ' || reference || ' ' || stock_note)) stored;

do $$
declare
  place name;
  threshold text := '';
  alike text := '';
begin
  select n.nspname into place from pg_extension e join pg_namespace n on n.oid = e.extnamespace where e.extname = 'pg_trgm';
  if place is not null then
    execute format('create index job_by_words on job using gin (search_text %I.gin_trgm_ops)', place);
    execute format('create index incident_by_words on incident using gin (search_text %I.gin_trgm_ops)', place);
    execute format('create index part_by_words on part using gin (search_text %I.gin_trgm_ops)', place);
    threshold := 'set pg_trgm.word_similarity_threshold = 0.2';
    alike := format('and word operator(%I.<%%) search_text', place);
  end if;
  execute format('
    create function parts_with(shop bigint, word text) returns setof bigint language plpgsql stable rows 100 %1$s as $f$
    begin
      return query select id from part where shop_id = shop and search_text like holding(word);
      if not found and length(word) > 3 then
        return query select id from part where shop_id = shop %2$s and has_one_letter_off(word, search_text);
      end if;
    end $f$', threshold, alike);
  execute format('
    create function jobs_with(shop bigint, word text) returns setof bigint language plpgsql stable rows 500 %1$s as $f$
    begin
      return query
        select id from job where shop_id = shop and search_text like holding(word)
        union
        select j.id from car c join job j on j.shop_id = shop and j.car_id = c.id
        where c.shop_id = shop and c.search_text like holding(word)
        union
        select j.id from customer u join car c on c.customer_id = u.id join job j on j.shop_id = shop and j.car_id = c.id
        where u.shop_id = shop and u.search_text like holding(word);
      if not found and length(word) > 3 then
        return query
          select id from job where shop_id = shop %2$s and has_one_letter_off(word, search_text)
          union
          select j.id from (select id from car where shop_id = shop %2$s and has_one_letter_off(word, search_text)) c
          join job j on j.shop_id = shop and j.car_id = c.id
          union
          select j.id from (select id from customer where shop_id = shop %2$s and has_one_letter_off(word, search_text)) u
          join car c on c.customer_id = u.id join job j on j.shop_id = shop and j.car_id = c.id;
      end if;
    end $f$', threshold, alike);
  execute format('
    create function incidents_with(shop bigint, word text) returns setof bigint language plpgsql stable rows 500 %1$s as $f$
    begin
      return query
        select id from incident where shop_id = shop and search_text like holding(word)
        union
        select i.id from car c join incident i on i.shop_id = shop and i.car_id = c.id
        where c.shop_id = shop and c.search_text like holding(word);
      if not found and length(word) > 3 then
        return query
          select id from incident where shop_id = shop %2$s and has_one_letter_off(word, search_text)
          union
          select i.id from (select id from car where shop_id = shop %2$s and has_one_letter_off(word, search_text)) c
          join incident i on i.shop_id = shop and i.car_id = c.id;
      end if;
    end $f$', threshold, alike);
end $$;

-- Ids that every word leads to, in any order; `finder` says which one word leads to.
create function all_words(finder regproc, shop bigint, words text) returns setof bigint language plpgsql stable rows 100 as $$
declare
  word text;
  found_now bigint[];
  all_of_them bigint[];
begin
  foreach word in array regexp_split_to_array(lower(btrim(words)), '\s+') loop
    execute format('select array(select %s($1, $2))', finder) into found_now using shop, word;
    all_of_them := case when all_of_them is null then found_now
                        else array(select unnest(all_of_them) intersect select unnest(found_now)) end;
    exit when cardinality(all_of_them) = 0;
  end loop;
  return query select unnest(all_of_them);
end $$;

-- Cars and customers are found by it too.
drop function cars_found(bigint, text);
drop function customers_found(bigint, text);
