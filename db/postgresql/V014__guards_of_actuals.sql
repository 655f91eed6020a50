-- What was found after a cloth was cut off stays as it was written. The same guards as in db/h2.

create trigger actuals_version_is_kept before update or delete on actuals_version for each row execute function refuse_change();
create trigger actuals_version_is_not_emptied before truncate on actuals_version for each statement execute function refuse_change();
create trigger actuals_entry_is_kept before update or delete on actuals_entry for each row execute function refuse_change();
create trigger actuals_entry_is_not_emptied before truncate on actuals_entry for each statement execute function refuse_change();
