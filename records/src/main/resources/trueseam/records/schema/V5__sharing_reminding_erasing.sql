-- A student shares a person with all her projects, or one project, with the teacher of one class. Whoever is let go, or whose class
-- ends, shares nothing there any more.
create table share (
    id text primary key,
    owner_id ${whole} not null references account (id),
    class_id text not null,
    person_id text,
    project_id text,
    unique (class_id, person_id),
    unique (class_id, project_id),
    check ((person_id is null) <> (project_id is null)),
    foreign key (class_id, owner_id) references class_member (class_id, account_id) on delete cascade,
    foreign key (owner_id, person_id) references person (owner_id, id) on delete cascade,
    foreign key (owner_id, project_id) references project (owner_id, id) on delete cascade
) ${strict};

create index share_of_owner on share (owner_id);

-- Who was shared, was so with every class.
insert into share (id, owner_id, class_id, person_id)
select person.id || '-' || class_member.class_id, person.owner_id, class_member.class_id, person.id
from person
join class_member on class_member.account_id = person.owner_id
where person.shared = 1;

alter table person drop column shared;

-- After how many months somebody is measured again.
create table measure_again (
    owner_id ${whole} primary key references account (id),
    months ${whole} not null,
    growing_months ${whole} not null
) ${strict};

-- An erased account keeps its number, for the trails of others that name it, and nothing else.
alter table account add column erased_at ${whole};
