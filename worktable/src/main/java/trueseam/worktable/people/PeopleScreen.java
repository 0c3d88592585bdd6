package trueseam.worktable.people;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import io.javalin.http.UploadedFile;
import java.io.IOException;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Map;
import java.util.Optional;
import trueseam.records.Drawer;
import trueseam.records.person.Person;
import trueseam.records.trouble.OutdatedException;
import trueseam.worktable.page.Brought;
import trueseam.worktable.page.Desk;
import trueseam.worktable.page.Pages;
import trueseam.worktable.page.Seats;
import trueseam.worktable.project.NoSuchProjectException;
import trueseam.worktable.project.Project;

/** One page a person: what is noted of her, her days, how her measures went, and two of her fittings side by side. */
public final class PeopleScreen {

    /** A photo as a telephone takes it. */
    private static final long LARGEST_PHOTO_BYTES = 8L << 20;

    private final Desk desk;
    private final Pages pages;

    /**
     * For one request.
     *
     * @param desk the desk that it is answered at
     * @param pages how pages are drawn
     */
    public PeopleScreen(Desk desk, Pages pages) {
        this.desk = desk;
        this.pages = pages;
    }

    /**
     * Names the addresses.
     *
     * @param routes the server's routes
     * @param seats whose desk a request is answered at
     */
    public static void answer(RoutesConfig routes, Seats seats) {
        routes.get("/people/{id}", context -> at(seats, context).show(context, "", 200));
        routes.get("/people/{id}/photo", context -> at(seats, context).photo(context));
        routes.get("/people/{id}/compare", context -> at(seats, context).compare(context));
        routes.post("/people/{id}", context -> at(seats, context).change(context));
        routes.post("/people/{id}/photo", context -> at(seats, context).bringPhoto(context));
        routes.post("/people/{id}/archive", context -> at(seats, context).archive(context));
        routes.post("/people/{id}/erase", context -> at(seats, context).erase(context));
    }

    private static PeopleScreen at(Seats seats, Context context) {
        Seats.Seat seat = seats.of(context);
        return new PeopleScreen(seat.desk(), seat.pages());
    }

    private Drawer drawer() {
        return desk.shelf().drawer();
    }

    private Person person(Context context) {
        return drawer().people().find(context.pathParam("id")).orElseThrow(NoSuchProjectException::new);
    }

    private void show(Context context, String problem, int status) {
        PersonPage page =
                PersonPage.of(drawer(), person(context), Again.rule(drawer()), LocalDate.now(ZoneId.systemDefault()));
        context.status(status)
                .html(pages.draw(
                        "people/page.jte", Map.of("frame", pages.frame(), "person", page, "problem", problem)));
    }

    private static String field(Context context, String name) {
        return Optional.ofNullable(context.formParam(name)).orElse("").strip();
    }

    /** The version that the page showed goes with the change: somebody else's is not overwritten. */
    private void keep(Context context, Person changed) {
        try {
            drawer().people().change(changed);
            context.redirect("/people/" + changed.id(), HttpStatus.SEE_OTHER);
        } catch (OutdatedException e) {
            show(context, e.getMessage(), 409);
        }
    }

    private void change(Context context) {
        Person now = person(context);
        String label = field(context, "label");
        if (!field(context, "shown").equals(Long.toString(now.version()))) {
            show(context, new OutdatedException("person").getMessage(), 409);
            return;
        }
        keep(
                context,
                now.with(label.isEmpty() ? now.label() : label, now.units(), now.population())
                        .withNote(field(context, "note")));
    }

    private void photo(Context context) {
        byte[] photo = person(context).photo().flatMap(drawer().files()::read).orElseThrow(NoSuchProjectException::new);
        context.contentType(isPng(photo) ? "image/png" : "image/jpeg").result(photo);
    }

    private static boolean isPng(byte[] content) {
        return content.length > 4 && (content[0] & 0xff) == 0x89 && content[1] == 'P';
    }

    private static boolean isJpeg(byte[] content) {
        return content.length > 4 && (content[0] & 0xff) == 0xff && (content[1] & 0xff) == 0xd8;
    }

    private void bringPhoto(Context context) throws IOException {
        Person now = person(context);
        UploadedFile file = context.uploadedFile("photo");
        if (file == null || file.size() == 0) {
            keep(context, now.withPhoto(Optional.empty()));
            drawer().files().sweep();
            return;
        }
        byte[] content = Brought.bytes(file);
        if (content.length > LARGEST_PHOTO_BYTES || !(isPng(content) || isJpeg(content))) {
            show(context, "The photo is no JPEG or PNG of at most 8 MB; choose another one.", 422);
            return;
        }
        keep(context, now.withPhoto(Optional.of(drawer().files().keep(content))));
    }

    private void archive(Context context) {
        keep(context, person(context).withArchived(field(context, "away").equals("yes")));
    }

    private void erase(Context context) {
        drawer().people().erase(person(context).id());
        context.redirect("/", HttpStatus.SEE_OTHER);
    }

    private void compare(Context context) {
        Person person = person(context);
        Project first = ofHers(context, person, "first");
        Project second = ofHers(context, person, "second");
        PairView pair = PairView.of(first, desk.workings(first), second, desk.workings(second));
        context.html(pages.draw(
                "people/pair.jte",
                Map.of("frame", pages.frame(), "label", person.label(), "id", person.id(), "pair", pair)));
    }

    private Project ofHers(Context context, Person person, String which) {
        String id = Optional.ofNullable(context.queryParam(which)).orElse("");
        return drawer().projects()
                .find(id)
                .filter(project -> project.head().person().equals(Optional.of(person.id())))
                .map(project -> desk.shelf().kept(project.id()).project())
                .orElseThrow(NoSuchProjectException::new);
    }
}
