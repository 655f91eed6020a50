-- What was said of a skein stays as it was said. The same guards as in db/h2.

create trigger skein_version_is_kept before update or delete on skein_version for each row execute function refuse_change();
create trigger skein_version_is_not_emptied before truncate on skein_version for each statement execute function refuse_change();
