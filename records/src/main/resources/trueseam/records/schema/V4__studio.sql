-- A studio or a school: who may sign in, who is signed in, which classes there are. No password, session or invitation can be read from
-- here: passwords are kept as Argon2id, the marks of sessions and invitations as SHA-256.
alter table account add column sign_in text;
alter table account add column password text;
alter table account add column closed ${whole} not null default 0 check (closed in (0, 1));
-- Goes up when everything that is signed in shall be signed out.
alter table account add column session_version ${whole} not null default 1;

create unique index account_sign_in on account (sign_in);

create table session (
    mark text primary key,
    account_id ${whole} not null references account (id),
    session_version ${whole} not null,
    ends_at ${whole} not null
) ${strict};

create table invitation (
    mark text primary key,
    account_id ${whole} not null references account (id),
    ends_at ${whole} not null
) ${strict};

-- Failed sign-ins, for making them wait; who is the SHA-256 of a name or an address.
create table attempt (
    who text primary key,
    failed ${whole} not null,
    since ${whole} not null
) ${strict};

-- A class belongs to the teacher who leads it.
create table taught_class (
    id text primary key,
    owner_id ${whole} not null references account (id),
    name text not null,
    created_at ${whole} not null,
    unique (owner_id, id)
) ${strict};

create table class_member (
    owner_id ${whole} not null,
    class_id text not null,
    account_id ${whole} not null references account (id),
    primary key (class_id, account_id),
    foreign key (owner_id, class_id) references taught_class (owner_id, id) on delete cascade
) ${strict};

create index class_member_of_account on class_member (account_id);
