-- What was measured and set stays as it was written. The same guards as in db/postgresql.

create trigger skein_measure_is_kept before update, delete on skein_measure for each row call 'hankbook.store.RefuseChange';
create trigger grist_sample_is_kept before update, delete on grist_sample for each row call 'hankbook.store.RefuseChange';
create trigger setting_is_kept before update, delete on setting for each row call 'hankbook.store.RefuseChange';
