-- What was kept of looms and reeds stays as it was kept. The same guards as in db/h2.

create trigger loom_version_is_kept before update or delete on loom_version for each row execute function refuse_change();
create trigger loom_version_is_not_emptied before truncate on loom_version for each statement execute function refuse_change();
create trigger reed_version_is_kept before update or delete on reed_version for each row execute function refuse_change();
create trigger reed_version_is_not_emptied before truncate on reed_version for each statement execute function refuse_change();
