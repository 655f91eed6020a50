-- Every version of a loom or reed that was ever kept; the newest is what it is now. One that was put away keeps its numbers.
-- Lengths are whole tenths of a millimetre.

create table loom_version (
  loom varchar(200) not null,
  version integer not null check (version > 0),
  width_tenths bigint not null check (width_tenths > 0),
  waste_tenths bigint not null check (waste_tenths >= 0),
  shafts integer not null check (shafts > 0),
  put_away boolean not null,
  author varchar(200) not null,
  recorded_at timestamp(6) with time zone not null,
  primary key (loom, version)
);

-- The dents are a text such as 12/in or 50/10 cm, as they were entered.
create table reed_version (
  reed varchar(200) not null,
  version integer not null check (version > 0),
  dents varchar(30) not null,
  width_tenths bigint check (width_tenths > 0),
  put_away boolean not null,
  author varchar(200) not null,
  recorded_at timestamp(6) with time zone not null,
  primary key (reed, version)
);
