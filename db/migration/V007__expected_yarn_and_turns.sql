-- Yarn that is on order stands in the ledger as ORDERED until it arrives; here is when it is expected. The newest version of a skein counts.
create table due_version (
  skein varchar(200) not null references skein (code),
  version integer not null check (version > 0),
  due date not null,
  author varchar(200) not null,
  recorded_at timestamp(6) with time zone not null,
  primary key (skein, version)
);

-- In which order plans take their yarn, each version the whole of it; the newest counts. A plan that it does not name comes after those it names.
create table turn_version (
  version integer not null check (version > 0),
  turn integer not null check (turn > 0),
  plan varchar(200) not null,
  author varchar(200) not null,
  recorded_at timestamp(6) with time zone not null,
  primary key (version, turn),
  unique (version, plan)
);

-- What was ordered arrives once.
alter table balance add constraint balance_does_not_arrive_twice check (tenths >= 0 or place <> 'ORDERED');
