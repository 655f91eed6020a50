-- What was kept of looms and reeds stays as it was kept. The same guards as in db/postgresql.

create trigger loom_version_is_kept before update, delete on loom_version for each row call 'hankbook.store.RefuseChange';
create trigger reed_version_is_kept before update, delete on reed_version for each row call 'hankbook.store.RefuseChange';
