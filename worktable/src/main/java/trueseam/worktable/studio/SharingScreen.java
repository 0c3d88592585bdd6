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
import trueseam.records.Drawer;
import trueseam.records.person.Person;

/** One's own people: whether a teacher sees them, who looked at their measures, and the way to all that is kept of them. */
public final class SharingScreen {

    private static final String NOBODY = "You have no such person; reload the page.";

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
     * @param trail the latest first
     */
    public record Line(Person person, int days, List<Looked> trail) {

        /** Does not change. */
        public Line {
            trail = List.copyOf(trail);
        }
    }

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
        routes.post("/my-people/{person}/shared", this::share);
    }

    private Drawer own(Context context) {
        return rooms.seats().drawer(rooms.seats().account(context));
    }

    private void show(Context context, String said) {
        Drawer own = own(context);
        Map<Long, String> names = own.trail().names();
        List<Line> lines = own.people().list("", true).stream()
                .map(person ->
                        new Line(person, own.days().of(person.id()).size(), trail(own, person.id(), names, LATEST)))
                .toList();
        rooms.show(
                context,
                "people",
                said,
                Map.of("lines", lines, "teachers", own.sharing().teachers()));
    }

    static List<Looked> trail(Drawer own, String person, Map<Long, String> names, int most) {
        return own.trail().of(person).stream()
                .limit(most)
                .map(access -> new Looked(
                        access.account() == own.owner() ? "you" : names.getOrDefault(access.account(), ""),
                        access.what(),
                        WHEN.format(Instant.ofEpochMilli(access.at()).atZone(ZoneId.systemDefault()))))
                .toList();
    }

    private void share(Context context) {
        Drawer own = own(context);
        Optional<Person> person = own.people().find(context.pathParam("person"));
        if (person.isEmpty()) {
            show(context, NOBODY);
            return;
        }
        boolean shared = field(context, "shared").equals("1");
        own.people().change(person.get().withShared(shared));
        own.trail().note(own.owner(), person.get().id(), shared ? "shared" : "no longer shared");
        context.redirect("/my-people", HttpStatus.SEE_OTHER);
    }
}
