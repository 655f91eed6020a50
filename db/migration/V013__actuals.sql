-- What was found after a cloth was cut off, as an actuals file; no version that was ever kept is lost. A draft may be half filled. A version that
-- squares the book names the act that made it and the version of the plan that its yarn was taken for; one that takes the last back has a reason and no text.
create table actuals_version (
  plan varchar(200) not null,
  number integer not null check (number > 0),
  deed varchar(10) not null check (deed in ('DRAFT', 'SQUARED', 'TAKEN_BACK')),
  act uuid unique,
  plan_version integer,
  body text not null,
  reason text not null,
  author varchar(200) not null,
  recorded_at timestamp(6) with time zone not null,
  primary key (plan, number),
  foreign key (plan, plan_version) references plan_version (plan, version),
  check ((deed = 'DRAFT') = (act is null)),
  check ((deed = 'SQUARED') = (plan_version is not null))
);

-- The entries that a version posted, in their order.
create table actuals_entry (
  plan varchar(200) not null,
  number integer not null,
  line integer not null check (line > 0),
  entry uuid not null unique references entry (id),
  primary key (plan, number, line),
  foreign key (plan, number) references actuals_version (plan, number)
);

-- The entry beside which a skein was measured where that entry may be of other skeins too, which the column entry never is.
alter table skein_measure add column beside uuid references entry (id);
alter table skein_measure add constraint skein_measure_has_one_entry check (entry is null or beside is null);
