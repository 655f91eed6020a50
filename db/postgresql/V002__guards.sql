-- What is written down stays as it was written, and balances move with the transfers. The same guards as in db/h2.

create function refuse_change() returns trigger language plpgsql as $$
begin
  raise exception 'What is written in % is never altered; reverse the entry instead.', tg_table_name using errcode = 'P0001';
end $$;

create trigger entry_is_kept before update or delete on entry for each row execute function refuse_change();
create trigger entry_is_not_emptied before truncate on entry for each statement execute function refuse_change();
create trigger transfer_is_kept before update or delete on transfer for each row execute function refuse_change();
create trigger transfer_is_not_emptied before truncate on transfer for each statement execute function refuse_change();
create trigger plan_version_is_kept before update or delete on plan_version for each row execute function refuse_change();
create trigger plan_version_is_not_emptied before truncate on plan_version for each statement execute function refuse_change();
create trigger skein_is_kept before update or delete on skein for each row execute function refuse_change();
create trigger skein_is_not_emptied before truncate on skein for each statement execute function refuse_change();

create function move_balance(of_skein varchar, at_place varchar, of_plan varchar, by bigint) returns void language plpgsql as $$
begin
  update balance set tenths = tenths + by where skein = of_skein and place = at_place and plan = of_plan;
  if not found then
    insert into balance (skein, place, plan, tenths) values (of_skein, at_place, of_plan, by);
  end if;
end $$;

create function move_balances() returns trigger language plpgsql as $$
begin
  perform move_balance(new.skein, new.from_place, new.from_plan, -new.tenths);
  perform move_balance(new.skein, new.to_place, new.to_plan, new.tenths);
  return null;
end $$;

create trigger transfer_moves_balances after insert on transfer for each row execute function move_balances();
