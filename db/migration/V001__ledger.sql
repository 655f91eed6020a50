-- One studio's ledger. Runs unchanged on H2 and on PostgreSQL; the triggers that guard it stand in db/h2 and db/postgresql.
-- Lengths are whole tenths of a millimetre, masses whole milligrams, money whole minor units, as in the domain.

-- The end of the chain, in one row. Whoever posts locks it first, so that entries get their numbers one after another.
create table chain_end (
  id integer not null primary key check (id = 1),
  entries bigint not null check (entries >= 0),
  last_hash varchar(64) not null
);

insert into chain_end (id, entries, last_hash)
values (1, 0, '0000000000000000000000000000000000000000000000000000000000000000');

-- A skein as it came; what there is of it now is for the balances to say. What a label says is said of this skein, so nothing is shared between rows.
create table skein (
  code varchar(200) not null primary key,
  yarn varchar(200) not null,
  colour varchar(200) not null,
  hex varchar(7) not null,
  fibre varchar(200) not null,
  grist varchar(60),
  form varchar(10) not null check (form in ('SKEIN', 'CONE', 'BALL', 'SPOOL')),
  label_tenths bigint check (label_tenths >= 0),
  gross_milligrams bigint check (gross_milligrams >= 0),
  tare_milligrams bigint check (tare_milligrams >= 0),
  opened boolean not null,
  lot varchar(200) not null,
  location varchar(200) not null,
  cost_minor bigint check (cost_minor >= 0),
  currency varchar(3),
  received date,
  recorded_at timestamp(6) with time zone not null,
  check ((gross_milligrams is null) = (tare_milligrams is null)),
  check (tare_milligrams <= gross_milligrams),
  check ((cost_minor is null) = (currency is null))
);

create index skein_by_yarn on skein (yarn, colour);

-- Every version of a plan that was ever kept; the newest is the plan. The text is a plan file, perhaps not finished yet.
create table plan_version (
  plan varchar(200) not null,
  version integer not null check (version > 0),
  body text not null,
  author varchar(200) not null,
  recorded_at timestamp(6) with time zone not null,
  primary key (plan, version)
);

create table entry (
  id uuid not null primary key,
  number bigint not null unique check (number > 0),
  kind varchar(16) not null check (kind in ('RECEIVE', 'RESERVE', 'RELEASE', 'DRAW', 'RETURN', 'WOVEN', 'WASTE', 'SAMPLE', 'RECOUNT', 'PART_WITH', 'REWIND', 'REVERSAL')),
  dated date not null,
  author varchar(200) not null,
  note text not null,
  reverses uuid unique references entry (id),
  previous_hash varchar(64) not null unique,
  hash varchar(64) not null unique,
  recorded_at timestamp(6) with time zone not null,
  check ((kind = 'REVERSAL') = (reverses is not null))
);

-- A place is its kind and the plan it belongs to, which is empty for the places that belong to none.
create table transfer (
  entry uuid not null references entry (id),
  line integer not null check (line > 0),
  skein varchar(200) not null references skein (code),
  from_place varchar(10) not null,
  from_plan varchar(200) not null,
  to_place varchar(10) not null,
  to_plan varchar(200) not null,
  tenths bigint not null check (tenths between 1 and 1000000000000),
  primary key (entry, line),
  check (from_place in ('MAKER', 'ORDERED', 'SHELF', 'RESERVED', 'LOOM', 'CLOTH', 'THRUMS', 'SAMPLE', 'AWAY', 'RECOUNT', 'REWOUND')),
  check (to_place in ('MAKER', 'ORDERED', 'SHELF', 'RESERVED', 'LOOM', 'CLOTH', 'THRUMS', 'SAMPLE', 'AWAY', 'RECOUNT', 'REWOUND')),
  check ((from_place in ('RESERVED', 'LOOM', 'CLOTH', 'THRUMS', 'SAMPLE')) = (from_plan <> '')),
  check ((to_place in ('RESERVED', 'LOOM', 'CLOTH', 'THRUMS', 'SAMPLE')) = (to_plan <> '')),
  check (from_place <> to_place or from_plan <> to_plan)
);

create index transfer_by_skein on transfer (skein);

-- Moved by a trigger with every transfer and by nothing else: each transfer takes from one place what it gives to another, so that a skein's
-- balances always sum to zero. The last check is what keeps yarn from being promised twice.
create table balance (
  skein varchar(200) not null references skein (code),
  place varchar(10) not null,
  plan varchar(200) not null,
  tenths bigint not null,
  primary key (skein, place, plan),
  check (place in ('MAKER', 'ORDERED', 'SHELF', 'RESERVED', 'LOOM', 'CLOTH', 'THRUMS', 'SAMPLE', 'AWAY', 'RECOUNT', 'REWOUND')),
  check ((place in ('RESERVED', 'LOOM', 'CLOTH', 'THRUMS', 'SAMPLE')) = (plan <> '')),
  constraint balance_is_not_promised_twice
    check (tenths >= 0 or place in ('MAKER', 'ORDERED', 'AWAY', 'RECOUNT', 'REWOUND'))
);
