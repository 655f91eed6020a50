-- What is written down stays as it was written, and balances move with the transfers. The same guards as in db/postgresql; H2 has no
-- trigger against emptying a whole table at once, which the program never does.

create trigger entry_is_kept before update, delete on entry for each row call 'hankbook.store.RefuseChange';
create trigger transfer_is_kept before update, delete on transfer for each row call 'hankbook.store.RefuseChange';
create trigger plan_version_is_kept before update, delete on plan_version for each row call 'hankbook.store.RefuseChange';
create trigger skein_is_kept before update, delete on skein for each row call 'hankbook.store.RefuseChange';
create trigger transfer_moves_balances after insert on transfer for each row call 'hankbook.store.MoveBalances';
