create table size_table (
    id text primary key,
    owner_id ${whole} not null references account (id),
    name text not null,
    source text not null,
    mark text not null,
    archived ${whole} not null check (archived in (0, 1)),
    created_at ${whole} not null,
    changed_at ${whole} not null,
    version ${whole} not null,
    unique (owner_id, id),
    foreign key (owner_id, mark) references file (owner_id, mark)
) ${strict};

-- What a fit came to, once it was given away: the report with its plan, and the altered pattern, as files.
create table fit (
    id text primary key,
    owner_id ${whole} not null,
    project_id text not null,
    project_version ${whole} not null,
    made_at ${whole} not null,
    proved ${whole} not null check (proved in (0, 1)),
    report text not null,
    altered text,
    unique (owner_id, id),
    foreign key (owner_id, project_id) references project (owner_id, id) on delete cascade,
    foreign key (owner_id, report) references file (owner_id, mark),
    foreign key (owner_id, altered) references file (owner_id, mark)
) ${strict};

create index fit_of_project on fit (owner_id, project_id);

create table print (
    id text primary key,
    owner_id ${whole} not null,
    project_id text not null,
    fit_id text not null,
    kind text not null,
    choices text not null,
    made_at ${whole} not null,
    foreign key (owner_id, project_id) references project (owner_id, id) on delete cascade,
    foreign key (owner_id, fit_id) references fit (owner_id, id) on delete cascade
) ${strict};

create index print_of_project on print (owner_id, project_id);

create table sitting (
    id text primary key,
    owner_id ${whole} not null,
    project_id text not null,
    place ${whole} not null,
    held_on text not null,
    unique (owner_id, id),
    foreign key (owner_id, project_id) references project (owner_id, id) on delete cascade
) ${strict};

create index sitting_of_project on sitting (owner_id, project_id);

create table finding (
    owner_id ${whole} not null,
    sitting_id text not null,
    place ${whole} not null,
    symptom text not null,
    cause text not null,
    alteration text not null,
    amount text not null,
    amount_mm ${number},
    measured_as text not null,
    side text not null,
    note text not null,
    primary key (sitting_id, place),
    foreign key (owner_id, sitting_id) references sitting (owner_id, id) on delete cascade
) ${strict};

-- What was pinned on one person over all her trial garments: derived, so it is never behind.
create view standing_evidence as
select
    finding.owner_id,
    project.person_id,
    project.id as project_id,
    project.name as project_name,
    project.changed_at,
    sitting.place as sitting_place,
    sitting.held_on,
    finding.place,
    finding.alteration,
    finding.side,
    finding.amount,
    finding.amount_mm,
    finding.measured_as
from finding
join sitting on sitting.owner_id = finding.owner_id and sitting.id = finding.sitting_id
join project on project.owner_id = sitting.owner_id and project.id = sitting.project_id
where project.person_id is not null and finding.alteration <> '' and finding.amount <> '';
