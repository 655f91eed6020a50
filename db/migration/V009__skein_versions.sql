-- What is said of a skein beside its yarn, since a dye lot is not known before the parcel comes. The newest version counts before what stands in the
-- skein's own row; its colour, fibre and grist are there only where the order did not say them. Nothing here changes how many metres it holds.
create table skein_version (
  skein varchar(200) not null references skein (code),
  version integer not null check (version > 0),
  hex varchar(7) not null,
  fibre varchar(200) not null,
  grist varchar(60),
  lot varchar(200) not null,
  location varchar(200) not null,
  cost_minor bigint check (cost_minor >= 0),
  currency varchar(3),
  received date,
  author varchar(200) not null,
  recorded_at timestamp(6) with time zone not null,
  primary key (skein, version),
  check ((cost_minor is null) = (currency is null))
);
