-- What was found after a cloth was cut off stays as it was written. The same guards as in db/postgresql.

create trigger actuals_version_is_kept before update, delete on actuals_version for each row call 'hankbook.store.RefuseChange';
create trigger actuals_entry_is_kept before update, delete on actuals_entry for each row call 'hankbook.store.RefuseChange';
