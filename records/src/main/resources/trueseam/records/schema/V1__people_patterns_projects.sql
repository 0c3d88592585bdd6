-- One story for SQLite and PostgreSQL: only four words differ (whole numbers, numbers, bytes, and strict tables), and are put in
-- when the script is run. Every row of a person belongs to an owner; a row can only hang on a row of the same owner, as owner_id is
-- part of every reference. Times are milliseconds since 1970; days are as typed, ISO where they can be read. Ids are made by the
-- program, so that they stay when everything is carried from one database to the other.

create table account (
    id ${whole} primary key,
    name text not null,
    role text not null check (role in ('owner', 'teacher', 'student')),
    created_at ${whole} not null,
    version ${whole} not null
) ${strict};

-- Who uses the program alone.
insert into account (id, name, role, created_at, version) values (1, '', 'owner', 0, 1);

create table file (
    owner_id ${whole} not null references account (id),
    mark text not null,
    size ${whole} not null,
    content ${bytes} not null,
    kept_at ${whole} not null,
    primary key (owner_id, mark)
) ${strict};

create table person (
    id text primary key,
    owner_id ${whole} not null references account (id),
    label text not null,
    note text not null,
    units text not null,
    population text not null,
    photo text,
    shared ${whole} not null check (shared in (0, 1)),
    archived ${whole} not null check (archived in (0, 1)),
    sought text not null,
    created_at ${whole} not null,
    changed_at ${whole} not null,
    version ${whole} not null,
    unique (owner_id, id),
    foreign key (owner_id, photo) references file (owner_id, mark)
) ${strict};

create table pattern (
    id text primary key,
    owner_id ${whole} not null references account (id),
    made_of text not null,
    name text not null,
    garment text not null,
    source text not null,
    size_table text not null,
    note text not null,
    archived ${whole} not null check (archived in (0, 1)),
    sought text not null,
    created_at ${whole} not null,
    changed_at ${whole} not null,
    version ${whole} not null,
    unique (owner_id, id),
    unique (owner_id, made_of)
) ${strict};

create table pattern_file (
    owner_id ${whole} not null,
    pattern_id text not null,
    mark text not null,
    name text not null,
    primary key (pattern_id, mark),
    foreign key (owner_id, pattern_id) references pattern (owner_id, id) on delete cascade,
    foreign key (owner_id, mark) references file (owner_id, mark)
) ${strict};

create table project (
    id text primary key,
    owner_id ${whole} not null references account (id),
    name text not null,
    person_id text,
    pattern_id text,
    size text not null,
    state_number ${whole} not null,
    archived ${whole} not null check (archived in (0, 1)),
    sought text not null,
    created_at ${whole} not null,
    changed_at ${whole} not null,
    version ${whole} not null,
    unique (owner_id, id),
    foreign key (owner_id, person_id) references person (owner_id, id),
    foreign key (owner_id, pattern_id) references pattern (owner_id, id)
) ${strict};

create index project_of_person on project (owner_id, person_id);
create index project_of_pattern on project (owner_id, pattern_id);

-- What was typed, state after state, for undoing.
create table project_state (
    owner_id ${whole} not null,
    project_id text not null,
    number ${whole} not null,
    label text not null,
    field text not null,
    content text not null,
    primary key (project_id, number),
    foreign key (owner_id, project_id) references project (owner_id, id) on delete cascade
) ${strict};

-- A day on which she was measured, as one project has it, or (without a project) as it was written at the person.
create table measuring_day (
    id text primary key,
    owner_id ${whole} not null,
    person_id text not null,
    project_id text,
    place ${whole} not null,
    measured_on text not null,
    note text not null,
    unique (owner_id, id),
    foreign key (owner_id, person_id) references person (owner_id, id) on delete cascade,
    foreign key (owner_id, project_id) references project (owner_id, id)
) ${strict};

create index measuring_day_of_person on measuring_day (owner_id, person_id);
create index measuring_day_of_project on measuring_day (owner_id, project_id);

create table reading (
    owner_id ${whole} not null,
    day_id text not null,
    place ${whole} not null,
    measure text not null,
    side text not null,
    typed text not null,
    unit text not null,
    origin text not null,
    note text not null,
    mm ${number},
    primary key (day_id, place),
    foreign key (owner_id, day_id) references measuring_day (owner_id, id) on delete cascade
) ${strict};

create index reading_of_measure on reading (owner_id, measure);
