-- What the owner decides for the whole shop. thresholds and figures hold only what differs from the usual, as
-- NAME=number parted by spaces: the same text that a check keeps of the policy and the figures it was made with.
alter table shop
  add column language text not null default 'en' check (language in ('en', 'de')),
  add column paper text not null default 'A4' check (paper in ('A4', 'LETTER')),
  add column recheck_days int not null default 30 check (recheck_days between 1 and 730),
  add column thresholds text not null default '' check (thresholds ~ '^([A-Z_]+=[0-9.E-]+( [A-Z_]+=[0-9.E-]+)*)?$'),
  add column figures text not null default '' check (figures ~ '^([a-zA-Z.]+=[0-9.E-]+( [a-zA-Z.]+=[0-9.E-]+)*)?$'),
  add column settings_version int not null default 0;
