-- A photo needs no words.
alter table handover_photo drop constraint handover_photo_caption_check;
alter table handover_photo add constraint handover_photo_caption_short check (length(caption) <= 300);
alter table handover_photo alter column caption set default '';
