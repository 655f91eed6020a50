-- The guards of V007's tables, and one more kind of entry. The same as in db/h2.

alter table entry drop constraint entry_kind_check;
alter table entry add constraint entry_kind_is_known
  check (kind in ('EXPECT', 'RECEIVE', 'RESERVE', 'RELEASE', 'DRAW', 'RETURN', 'WOVEN', 'WASTE', 'SAMPLE', 'RECOUNT', 'PART_WITH', 'REWIND', 'REVERSAL'));

create trigger due_version_is_kept before update or delete on due_version for each row execute function refuse_change();
create trigger due_version_is_not_emptied before truncate on due_version for each statement execute function refuse_change();
create trigger turn_version_is_kept before update or delete on turn_version for each row execute function refuse_change();
create trigger turn_version_is_not_emptied before truncate on turn_version for each statement execute function refuse_change();
