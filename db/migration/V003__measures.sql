-- How else a skein was measured when it came: turns of a reel, and the moisture in it when it was weighed, as it was written.
alter table skein add column turns integer;
alter table skein add column reel_tenths bigint;
alter table skein add column regain varchar(40);
alter table skein add constraint skein_turns_have_their_reel check ((turns is null) = (reel_tenths is null) and turns > 0 and reel_tenths > 0);
alter table skein add constraint skein_regain_is_of_a_weighing check (regain is null or gross_milligrams is not null);

-- A skein measured again after it came, with the entry that put the book right; none where it was right. What was found is all that was on the skein then.
create table skein_measure (
  skein varchar(200) not null references skein (code),
  number integer not null check (number > 0),
  entry uuid unique references entry (id),
  found_tenths bigint not null check (found_tenths >= 0),
  turns integer check (turns > 0),
  reel_tenths bigint check (reel_tenths > 0),
  gross_milligrams bigint check (gross_milligrams >= 0),
  tare_milligrams bigint check (tare_milligrams >= 0),
  regain varchar(40),
  author varchar(200) not null,
  recorded_at timestamp(6) with time zone not null,
  primary key (skein, number),
  check ((turns is null) = (reel_tenths is null)),
  check ((gross_milligrams is null) = (tare_milligrams is null)),
  check (tare_milligrams <= gross_milligrams),
  check (regain is null or gross_milligrams is not null)
);

-- Lengths of a yarn that were weighed; the newest rules. One without a length says that the yarn number is to be used again.
create table grist_sample (
  yarn varchar(200) not null,
  number integer not null check (number > 0),
  length_tenths bigint check (length_tenths > 0),
  mass_milligrams bigint check (mass_milligrams > 0),
  division_milligrams bigint check (division_milligrams > 0),
  within_tenths bigint check (within_tenths >= 0),
  author varchar(200) not null,
  recorded_at timestamp(6) with time zone not null,
  primary key (yarn, number),
  check ((length_tenths is null) = (mass_milligrams is null)),
  check ((length_tenths is null) = (division_milligrams is null)),
  check ((length_tenths is null) = (within_tenths is null))
);

-- What the owner judges otherwise than the program; the newest rules.
create table setting (
  name varchar(60) not null,
  number integer not null check (number > 0),
  content varchar(200) not null,
  author varchar(200) not null,
  recorded_at timestamp(6) with time zone not null,
  primary key (name, number)
);
