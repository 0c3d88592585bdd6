-- Who looked at or changed whose measures. It names no measures, and outlives the person's own rows on purpose.
create table access (
    id text primary key,
    owner_id ${whole} not null references account (id),
    account_id ${whole} not null references account (id),
    person_id text not null,
    what text not null,
    happened_at ${whole} not null
) ${strict};

create index access_of_person on access (owner_id, person_id, happened_at);
