-- The guards of V007's tables, and one more kind of entry. The same as in db/postgresql; H2 names a check that was given no name by itself.

execute immediate (
  select 'alter table entry drop constraint ' || quote_ident(constraint_name)
  from information_schema.check_constraints
  where check_clause like '%PART_WITH%'
);
alter table entry add constraint entry_kind_is_known
  check (kind in ('EXPECT', 'RECEIVE', 'RESERVE', 'RELEASE', 'DRAW', 'RETURN', 'WOVEN', 'WASTE', 'SAMPLE', 'RECOUNT', 'PART_WITH', 'REWIND', 'REVERSAL'));

create trigger due_version_is_kept before update, delete on due_version for each row call 'hankbook.store.RefuseChange';
create trigger turn_version_is_kept before update, delete on turn_version for each row call 'hankbook.store.RefuseChange';
