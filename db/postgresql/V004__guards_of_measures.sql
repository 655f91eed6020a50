-- What was measured and set stays as it was written. The same guards as in db/h2.

create trigger skein_measure_is_kept before update or delete on skein_measure for each row execute function refuse_change();
create trigger skein_measure_is_not_emptied before truncate on skein_measure for each statement execute function refuse_change();
create trigger grist_sample_is_kept before update or delete on grist_sample for each row execute function refuse_change();
create trigger grist_sample_is_not_emptied before truncate on grist_sample for each statement execute function refuse_change();
create trigger setting_is_kept before update or delete on setting for each row execute function refuse_change();
create trigger setting_is_not_emptied before truncate on setting for each statement execute function refuse_change();
