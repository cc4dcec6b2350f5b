-- The language in which somebody reads the pages; null: as the browser asks.
alter table account add column language text check (language in ('en', 'de'));
