-- What was asked about a car that came back hot, and what a test showed: the newest answer to a question counts, an empty one takes it back.
create table incident_answer (
  id bigint generated always as identity primary key,
  shop_id bigint not null,
  incident_id bigint not null,
  question text not null check (question ~ '^[A-Z_]{1,40}$'),
  answer text not null check (length(answer) <= 100),
  author_id bigint not null,
  answered_at timestamptz not null default clock_timestamp(),
  unique (shop_id, id),
  foreign key (shop_id, incident_id) references incident (shop_id, id),
  foreign key (shop_id, author_id) references account (shop_id, id)
);
create index incident_answer_newest on incident_answer (shop_id, incident_id, question, id desc);
call make_append_only('incident_answer');
