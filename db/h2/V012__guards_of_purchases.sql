-- What was paid stays as it was written. The same guards as in db/postgresql.

create trigger purchase_version_is_kept before update, delete on purchase_version for each row call 'hankbook.store.RefuseChange';
create trigger purchase_line_is_kept before update, delete on purchase_line for each row call 'hankbook.store.RefuseChange';
create trigger purchase_skein_is_kept before update, delete on purchase_skein for each row call 'hankbook.store.RefuseChange';
