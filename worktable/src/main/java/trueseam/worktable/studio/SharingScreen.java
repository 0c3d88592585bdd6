package trueseam.worktable.studio;

import static trueseam.worktable.studio.StudioScreens.field;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiPredicate;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import trueseam.records.Drawer;
import trueseam.records.account.Account;
import trueseam.records.account.AccountException;
import trueseam.records.group.JoinedClass;
import trueseam.records.group.Share;
import trueseam.records.person.Person;
import trueseam.records.project.KeptProject;
import trueseam.records.project.Sought;

/**
 * One's own people: which class's teacher sees them or a project of theirs, who looked at their measures, and the way to all that is kept
 * of them; and erasing all of it with one's account.
 */
public final class SharingScreen {

    private static final String NOBODY = "You have no such person or project; reload the page.";

    private static final String NO_CLASS = "You are not in that class any more; reload the page. Nothing was shared.";

    /** Enough to see what happened lately; all of it is in the export. */
    private static final int LATEST = 50;

    private static final DateTimeFormatter WHEN = DateTimeFormatter.ofPattern("yyyy-MM-dd HH:mm");

    private final StudioScreens.Rooms rooms;

    SharingScreen(StudioScreens.Rooms rooms) {
        this.rooms = rooms;
    }

    /**
     * A person with who looked at her measures.
     *
     * @param person the person
     * @param days on how many days she was measured
     * @param with which classes she is shared with and which not
     * @param projects her projects
     * @param trail the latest first
     */
    public record Line(Person person, int days, List<With> with, List<Project> projects, List<Looked> trail) {

        /** Does not change. */
        public Line {
            with = List.copyOf(with);
            projects = List.copyOf(projects);
            trail = List.copyOf(trail);
        }
    }

    /**
     * A project of hers, which can be shared alone.
     *
     * @param id its mark
     * @param name its name
     * @param with which classes it is shared with and which not
     */
    public record Project(String id, String name, List<With> with) {

        /** Does not change. */
        public Project {
            with = List.copyOf(with);
        }
    }

    /**
     * Whether something is shared with a class.
     *
     * @param joined the class
     * @param shared whether it is
     */
    public record With(JoinedClass joined, boolean shared) {}

    /**
     * Somebody looked at her measures.
     *
     * @param who a name
     * @param what on which page
     * @param when day and time
     */
    public record Looked(String who, String what, String when) {}

    void answer(RoutesConfig routes) {
        routes.get("/my-people", context -> show(context, ""));
        routes.post("/my-people/{person}/shared", this::sharePerson);
        routes.post("/my-projects/{id}/shared", this::shareProject);
        routes.post("/erase-my-account", this::eraseMyself);
    }

    private Drawer own(Context context) {
        return rooms.seats().drawer(rooms.seats().account(context));
    }

    private void show(Context context, String said) {
        Drawer own = own(context);
        List<JoinedClass> classes = own.sharing().classes();
        List<Share> shares = own.sharing().shares();
        Map<Long, String> names = own.trail().names();
        List<Line> lines = own.people().list("", true).stream()
                .map(person -> new Line(
                        person,
                        own.days().of(person.id()).size(),
                        with(classes, shares, share -> share.person().equals(Optional.of(person.id()))),
                        projects(own, person, classes, shares),
                        trail(own, person.id(), names, LATEST)))
                .toList();
        rooms.show(
                context,
                "people",
                said,
                Map.of(
                        "lines",
                        lines,
                        "classes",
                        classes,
                        "name",
                        rooms.seats().account(context).name()));
    }

    private static List<With> with(List<JoinedClass> classes, List<Share> shares, Predicate<Share> of) {
        Set<String> shared = shares.stream().filter(of).map(Share::taughtClass).collect(Collectors.toSet());
        return classes.stream()
                .map(joined -> new With(joined, shared.contains(joined.id())))
                .toList();
    }

    private static List<Project> projects(Drawer own, Person person, List<JoinedClass> classes, List<Share> shares) {
        return own.projects().list(Sought.of(person.id())).stream()
                .map(project ->
                        new Project(project.id(), project.head().name(), with(classes, shares, share -> share.project()
                                .equals(Optional.of(project.id())))))
                .toList();
    }

    static List<Looked> trail(Drawer own, String person, Map<Long, String> names, int most) {
        return own.trail().of(person).stream()
                .limit(most)
                .map(access -> new Looked(
                        access.account() == own.owner() ? "you" : called(names.getOrDefault(access.account(), "")),
                        access.what(),
                        WHEN.format(Instant.ofEpochMilli(access.at()).atZone(ZoneId.systemDefault()))))
                .toList();
    }

    /** Who erased her account has no name any more. */
    private static String called(String name) {
        return name.isEmpty() ? "an account that was erased" : name;
    }

    private void sharePerson(Context context) {
        Drawer own = own(context);
        String person = context.pathParam("person");
        boolean known = own.people().find(person).isPresent();
        share(context, known ? Optional.of(person) : Optional.empty(), (taughtClass, shared) -> own.sharing()
                .person(taughtClass, person, shared));
    }

    private void shareProject(Context context) {
        Drawer own = own(context);
        Optional<KeptProject> project = own.projects().find(context.pathParam("id"));
        share(context, project.flatMap(one -> one.head().person()), (taughtClass, shared) -> own.sharing()
                .project(taughtClass, context.pathParam("id"), shared));
    }

    private void share(Context context, Optional<String> person, BiPredicate<String, Boolean> set) {
        boolean wanted = field(context, "shared").equals("1");
        Drawer own = own(context);
        Optional<JoinedClass> joined = own.sharing().classes().stream()
                .filter(one -> one.id().equals(field(context, "class")))
                .findFirst();
        if (person.isEmpty() || joined.isEmpty()) {
            show(context, person.isEmpty() ? NOBODY : NO_CLASS);
            return;
        }
        if (set.test(joined.get().id(), wanted) != wanted) {
            show(context, NO_CLASS); // she was let go in this very moment
            return;
        }
        own.trail().note(own.owner(), person.get(), wanted ? "shared" : "no longer shared");
        context.redirect("/my-people", HttpStatus.SEE_OTHER);
    }

    private void eraseMyself(Context context) {
        Account account = rooms.seats().account(context);
        if (!field(context, "typed").strip().equals(account.name())) {
            show(context, AccountsScreen.notTyped(account.name()));
            return;
        }
        try {
            rooms.book().get().studio().accounts().erase(account.id(), account.id());
        } catch (AccountException e) {
            show(context, e.getMessage());
            return;
        }
        rooms.seats().forget(account.id());
        rooms.gate().end(context);
        context.redirect("/sign-in", HttpStatus.SEE_OTHER);
    }
}
