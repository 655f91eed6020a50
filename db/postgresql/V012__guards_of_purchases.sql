-- What was paid stays as it was written. The same guards as in db/h2.

create trigger purchase_version_is_kept before update or delete on purchase_version for each row execute function refuse_change();
create trigger purchase_version_is_not_emptied before truncate on purchase_version for each statement execute function refuse_change();

create trigger purchase_line_is_kept before update or delete on purchase_line for each row execute function refuse_change();
create trigger purchase_line_is_not_emptied before truncate on purchase_line for each statement execute function refuse_change();

create trigger purchase_skein_is_kept before update or delete on purchase_skein for each row execute function refuse_change();
create trigger purchase_skein_is_not_emptied before truncate on purchase_skein for each statement execute function refuse_change();
