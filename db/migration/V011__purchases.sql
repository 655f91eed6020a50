-- What was paid, as the bill says, and how it was shared over its lines and skeins when it was entered. Each version is the whole of it; the newest counts, and
-- one that does not stand says that the purchase was taken back. Amounts are whole smallest coins of the currency beside them.
create table purchase_version (
  purchase integer not null check (purchase > 0),
  version integer not null check (version > 0),
  dated date not null,
  seller varchar(200) not null,
  currency varchar(3) not null,
  carriage_minor bigint not null check (carriage_minor >= 0),
  carriage_currency varchar(3) not null,
  carriage_by varchar(5) not null check (carriage_by in ('VALUE', 'MASS')),
  duty_minor bigint not null check (duty_minor >= 0),
  duty_currency varchar(3) not null,
  duty_by varchar(5) not null check (duty_by in ('VALUE', 'MASS')),
  discount_minor bigint not null check (discount_minor >= 0),
  discount_by varchar(5) not null check (discount_by in ('VALUE', 'MASS')),
  rate varchar(30),
  rate_day date,
  home_currency varchar(3) not null,
  stands boolean not null,
  reason text not null,
  author varchar(200) not null,
  recorded_at timestamp(6) with time zone not null,
  primary key (purchase, version),
  check ((rate is null) = (rate_day is null)),
  check ((rate is null) = (currency = home_currency))
);

-- A line with its shares of what was paid for all lines.
create table purchase_line (
  purchase integer not null,
  version integer not null,
  line integer not null check (line > 0),
  words varchar(200) not null,
  price_minor bigint not null check (price_minor >= 0),
  carriage_minor bigint not null check (carriage_minor >= 0),
  duty_minor bigint not null check (duty_minor >= 0),
  discount_minor bigint not null check (discount_minor >= 0),
  primary key (purchase, version, line),
  foreign key (purchase, version) references purchase_version (purchase, version)
);

-- What a skein cost with all that was paid to have it, in the home currency, and what was said to be paid for it before, which holds again when the purchase
-- is taken back.
create table purchase_skein (
  purchase integer not null,
  version integer not null,
  line integer not null,
  turn integer not null check (turn > 0),
  skein varchar(200) not null references skein (code),
  landed_minor bigint not null check (landed_minor >= 0),
  before_minor bigint check (before_minor >= 0),
  before_currency varchar(3),
  primary key (purchase, version, skein),
  unique (purchase, version, line, turn),
  foreign key (purchase, version, line) references purchase_line (purchase, version, line),
  check ((before_minor is null) = (before_currency is null))
);

create index purchase_skein_by_skein on purchase_skein (skein);
