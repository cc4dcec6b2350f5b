-- Whether the owner of a car was reached when a part is called back. The newest row of a car and part counts.
create table recall_contact (
  id bigint generated always as identity primary key,
  shop_id bigint not null,
  part_id bigint not null,
  car_id bigint not null,
  reached boolean not null,
  account_id bigint not null,
  at timestamptz not null default now(),
  foreign key (shop_id, part_id) references part (shop_id, id),
  foreign key (shop_id, car_id) references car (shop_id, id),
  foreign key (shop_id, account_id) references account (shop_id, id)
);
create index recall_contact_by_part on recall_contact (part_id, car_id, id desc);
call make_append_only('recall_contact');
