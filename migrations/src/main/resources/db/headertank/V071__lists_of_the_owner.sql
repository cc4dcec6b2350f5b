-- Checks of a shop, newest first: the owner's list of work that nobody has signed reads it from the end.
create index check_run_by_shop on check_run (shop_id, id desc);

-- Cars of a shop, for the list of those that were changed and not rated again.
create index revision_by_shop on revision (shop_id, saved_at, car_id);
