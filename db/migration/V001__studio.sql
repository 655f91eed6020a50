create table studio (
  id integer not null primary key
);
