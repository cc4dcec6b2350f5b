-- Searching: every word somewhere in the text, in any order; a word of four letters or more may have one letter wrong, missing
-- or too many, numbers none. That one letter comes from the extension fuzzystrmatch, which the built-in server and every usual
-- one brings along and which the owner of a database may switch on. Where it cannot be had, searches go on without forgiving.
do $$
declare
  place name;
begin
  begin
    create extension if not exists fuzzystrmatch;
  exception when others then
    raise notice 'searches will not forgive a letter: %', sqlerrm;
  end;
  select n.nspname into place from pg_extension e join pg_namespace n on n.oid = e.extnamespace
  where e.extname = 'fuzzystrmatch';
  if place is null then
    create function one_letter_off(word text, token text) returns boolean language sql immutable as 'select false';
  else
    execute format(
      'create function one_letter_off(word text, token text) returns boolean language sql immutable as $f$
         select length(word) between 4 and 40 and word !~ ''^[0-9]+$''
            and (%1$I.levenshtein_less_equal(word, left(token, 41), 1) <= 1
                 or %1$I.levenshtein_less_equal(word, left(token, length(word)), 1) <= 1)
       $f$', place);
  end if;
end $$;

create function fits(words text, among text) returns boolean language sql immutable as $$
  select not exists (
    select 1 from regexp_split_to_table(lower(btrim(words)), '\s+') word
    where position(word in lower(among)) = 0
      and not exists (select 1 from regexp_split_to_table(lower(among), '[^[:alnum:]]+') token
                      where one_letter_off(word, token)))
$$;
