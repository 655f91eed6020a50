-- What was said of a skein stays as it was said. The same guards as in db/postgresql.

create trigger skein_version_is_kept before update, delete on skein_version for each row call 'hankbook.store.RefuseChange';
