-- What was seen of a car, in the order in which it came: a log that is kept, a reading that has settled. `said_text` is canonical JSON.
-- A piece belongs to the revision that described the car when it was seen.
create table car_evidence (
  id bigint generated always as identity primary key,
  shop_id bigint not null,
  car_id bigint not null,
  revision_id bigint not null,
  kind text not null check (kind in ('LOG', 'SETTLED')),
  log_id bigint,
  said_text text not null,
  said jsonb not null generated always as (said_text::jsonb) stored,
  said_sha256 bytea not null check (said_sha256 = sha256(convert_to(said_text, 'UTF8'))),
  author_id bigint not null,
  added_at timestamptz not null default clock_timestamp(),
  unique (shop_id, id),
  check ((kind = 'LOG') = (log_id is not null)),
  foreign key (shop_id, car_id) references car (shop_id, id),
  foreign key (shop_id, revision_id) references revision (shop_id, id),
  foreign key (shop_id, log_id) references car_log (shop_id, id),
  foreign key (shop_id, author_id) references account (shop_id, id)
);
create index car_evidence_by_car on car_evidence (shop_id, car_id, id);
-- A log counts once.
create unique index car_evidence_of_log on car_evidence (shop_id, log_id) where log_id is not null;
call make_append_only('car_evidence');

-- Whether a piece is used, and as of which revision; the newest row counts, and without any the piece is used as it was added.
create table evidence_switch (
  id bigint generated always as identity primary key,
  shop_id bigint not null,
  evidence_id bigint not null,
  used boolean not null,
  revision_id bigint not null,
  reason text not null check (btrim(reason) <> '' and length(reason) <= 1000),
  author_id bigint not null,
  switched_at timestamptz not null default clock_timestamp(),
  unique (shop_id, id),
  foreign key (shop_id, evidence_id) references car_evidence (shop_id, id),
  foreign key (shop_id, revision_id) references revision (shop_id, id),
  foreign key (shop_id, author_id) references account (shop_id, id)
);
create index evidence_switch_by_piece on evidence_switch (shop_id, evidence_id, id desc);
call make_append_only('evidence_switch');

create view evidence_now as
select e.id, e.shop_id, e.car_id, e.kind, e.log_id, e.said_text, e.said_sha256, e.author_id, e.added_at,
       coalesce(s.used, true) as used, coalesce(s.revision_id, e.revision_id) as revision_id,
       s.reason, s.author_id as switched_by, s.switched_at
from car_evidence e
left join lateral (
  select * from evidence_switch w where w.shop_id = e.shop_id and w.evidence_id = e.id order by w.id desc limit 1) s on true;

-- What follows from evidence takes seconds to work out: worked out once and kept by what it follows from. `key_text` names all of that.
create table car_answer (
  id bigint generated always as identity primary key,
  shop_id bigint not null,
  car_id bigint not null,
  question text not null check (question in ('LEARNED', 'MARGINS', 'NEXT', 'CONFIRMS')),
  key_text text not null,
  key_sha256 bytea not null check (key_sha256 = sha256(convert_to(key_text, 'UTF8'))),
  answer_text text not null,
  answer_sha256 bytea not null check (answer_sha256 = sha256(convert_to(answer_text, 'UTF8'))),
  answered_at timestamptz not null default clock_timestamp(),
  unique (shop_id, id),
  unique (shop_id, car_id, question, key_sha256),
  foreign key (shop_id, car_id) references car (shop_id, id)
);
call make_append_only('car_answer');

-- That somebody works an answer out just now, so that nobody else does: of no more interest once the answer is there.
create table car_question (
  id bigint generated always as identity primary key,
  shop_id bigint not null,
  car_id bigint not null,
  question text not null,
  key_sha256 bytea not null,
  begun_at timestamptz not null default clock_timestamp(),
  foreign key (shop_id, car_id) references car (shop_id, id)
);
create index car_question_by_key on car_question (shop_id, car_id, question, key_sha256, begun_at desc);
