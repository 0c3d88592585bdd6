package trueseam.worktable;

import io.javalin.Javalin;
import io.javalin.config.JavalinConfig;
import io.javalin.http.Context;
import io.javalin.http.staticfiles.Location;
import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import java.util.function.Supplier;
import org.slf4j.LoggerFactory;
import trueseam.garment.measure.UnknownMeasureException;
import trueseam.records.RecordBook;
import trueseam.records.account.AccountException;
import trueseam.records.archive.ArchiveException;
import trueseam.records.trouble.RecordBookException;
import trueseam.records.trouble.Trouble;
import trueseam.worktable.chart.ChartScreen;
import trueseam.worktable.cloth.ClothScreen;
import trueseam.worktable.cloth.Searches;
import trueseam.worktable.ease.EaseScreen;
import trueseam.worktable.page.Desk;
import trueseam.worktable.page.Pages;
import trueseam.worktable.page.RefusedException;
import trueseam.worktable.page.Routes;
import trueseam.worktable.page.Screen;
import trueseam.worktable.page.Seats;
import trueseam.worktable.pattern.DrawingScreen;
import trueseam.worktable.pattern.PatternScreen;
import trueseam.worktable.person.PersonScreen;
import trueseam.worktable.print.PrintScreen;
import trueseam.worktable.project.ChangedElsewhereException;
import trueseam.worktable.project.DataFolder;
import trueseam.worktable.project.NoSuchProjectException;
import trueseam.worktable.project.PatternPart;
import trueseam.worktable.project.Project;
import trueseam.worktable.project.Shelf;
import trueseam.worktable.project.ShelfException;
import trueseam.worktable.standing.StandingScreen;
import trueseam.worktable.start.History;
import trueseam.worktable.start.StartScreen;
import trueseam.worktable.studio.Gate;
import trueseam.worktable.studio.Reach;
import trueseam.worktable.studio.StudioScreens;
import trueseam.worktable.studio.StudioSeats;
import trueseam.worktable.table.TableScreen;
import trueseam.worktable.trial.TrialScreen;

/** The running worktable: a server for browsers on this very machine, or for those of a studio. */
public final class Worktable implements AutoCloseable {

    /** Marks a request whose answer says already what went wrong, so that the server's own words do not take its place. */
    private static final String SAID = "said";

    private final Javalin server;
    private final RecordBook book;
    private final DataFolder folder;
    private final Searches searches;
    private final Reach reach;

    private Worktable(Javalin server, RecordBook book, DataFolder folder, Searches searches, Reach reach) {
        this.searches = searches;
        this.reach = reach;
        this.server = server;
        this.book = book;
        this.folder = folder;
    }

    /**
     * Opens the worktable with the record book in the data folder.
     *
     * @param data the data folder; made if it is not there
     * @param port the port, 0 for any free one
     * @return the running worktable
     * @throws ShelfException if the data folder cannot be used
     * @throws RecordBookException if the record book cannot be opened
     * @throws WorktableException if the port is taken
     */
    public static Worktable open(Path data, int port) {
        return open(data, Optional.empty(), Optional.empty(), port);
    }

    /**
     * Opens the worktable.
     *
     * @param data the data folder; made if it is not there
     * @param recordBook a path or the address of a database; empty: a file in the data folder
     * @param password the password at the database, if it needs one that is not in the address
     * @param port the port, 0 for any free one
     * @return the running worktable
     * @throws ShelfException if the data folder cannot be used
     * @throws RecordBookException if the record book cannot be opened
     * @throws WorktableException if the port is taken
     */
    public static Worktable open(Path data, Optional<String> recordBook, Optional<String> password, int port) {
        return open(data, recordBook, password, Optional.empty(), port);
    }

    /**
     * Opens the worktable for a studio: several accounts, each with its own people.
     *
     * @param data the data folder; made if it is not there
     * @param recordBook a path or the address of a database; empty: a file in the data folder
     * @param password the password at the database, if it needs one that is not in the address
     * @param reach from where it is reached
     * @param port the port, 0 for any free one
     * @return the running worktable
     * @throws ShelfException if the data folder cannot be used
     * @throws RecordBookException if the record book cannot be opened
     * @throws WorktableException if the port is taken
     */
    public static Worktable studio(
            Path data, Optional<String> recordBook, Optional<String> password, Reach reach, int port) {
        return open(data, recordBook, password, Optional.of(reach), port);
    }

    private static Worktable open(
            Path data, Optional<String> recordBook, Optional<String> password, Optional<Reach> studio, int port) {
        DataFolder folder = DataFolder.open(data);
        Pages pages = pages(folder);
        Searches searches = Searches.ofThisMachine();
        // The record book is opened while the server starts: each takes some tenths of a second.
        CompletableFuture<RecordBook> opening = CompletableFuture.supplyAsync(() -> {
            RecordBook book = folder.recordBook(recordBook, password, Clock.systemUTC());
            new Shelf(book.drawer(RecordBook.SINGLE_OWNER)).list(); // the first question loads most of the classes
            return book;
        });
        try {
            CompletableFuture<Shelf> shelf = opening.thenApply(book -> new Shelf(book.drawer(RecordBook.SINGLE_OWNER)));
            Desk desk = new Desk(shelf::join);
            Javalin server = studio.isPresent()
                    ? studio(opening::join, pages, studio.get(), searches, port)
                    : alone(new Seats.Seat(desk, pages), searches, port);
            RecordBook book = opened(opening, server, folder);
            warm(desk, pages);
            return new Worktable(server, book, folder, searches, studio.orElse(Reach.thisMachine()));
        } catch (io.javalin.util.JavalinBindException e) {
            opening.thenAccept(RecordBook::close).exceptionally(failed -> null).join();
            folder.close();
            throw new WorktableException(
                    "Port " + port + " of this machine is taken; name another one with --port, or 0 for any.", e);
        }
    }

    private static Pages pages(DataFolder folder) {
        try {
            return new Pages(folder.secret());
        } catch (ShelfException e) {
            folder.close();
            throw e;
        }
    }

    /** For whoever sits at this machine: no accounts, one desk. */
    private static Javalin alone(Seats.Seat seat, Searches searches, int port) {
        Reach reach = Reach.thisMachine();
        Guard guard = new Guard(reach, context -> seat.pages().secret());
        return Javalin.create(config -> served(config, guard, context -> seat, seat.pages(), searches))
                .start(reach.bind(), port);
    }

    /** For several accounts. */
    private static Javalin studio(Supplier<RecordBook> book, Pages pages, Reach reach, Searches searches, int port) {
        Gate gate = new Gate(() -> book.get().studio(), reach, pages.secret());
        StudioSeats seats = new StudioSeats(book, gate, pages, Clock.systemUTC());
        Guard guard = new Guard(reach, gate::secret);
        return Javalin.create(config -> {
                    served(config, guard, seats, pages, searches);
                    config.routes.before(gate::admit);
                    StudioScreens.answer(config.routes, new StudioScreens.Rooms(book, gate, seats, pages, reach));
                })
                .start(reach.bind(), port);
    }

    private static void served(JavalinConfig config, Guard guard, Seats seats, Pages pages, Searches searches) {
        settings(config);
        config.routes.before(guard::headers);
        config.routes.before(guard::check);
        StartScreen.answer(config.routes, seats);
        Routes routes = new Routes(config.routes, seats);
        screens(searches).forEach(screen -> screen.answer(routes));
        failures(config, pages);
    }

    /** The record book, once it is open; without it there is nothing to serve. */
    private static RecordBook opened(CompletableFuture<RecordBook> opening, Javalin server, DataFolder folder) {
        try {
            return opening.join();
        } catch (CompletionException e) {
            server.stop();
            folder.close();
            if (e.getCause() instanceof RuntimeException own) {
                throw own;
            }
            throw e;
        }
    }

    /** The first page and the first fit are worked out once for nobody, so that the first person need not wait for the classes. */
    private static void warm(Desk desk, Pages pages) {
        Thread warming = new Thread(
                () -> {
                    pages.draw("start/sorry.jte", Map.of("sentence", ""));
                    desk.workings(Project.named("")
                                    .with(new PatternPart(
                                            "draft", "bodice", List.of(), "misses", "14", "", "", Map.of())))
                            .taken();
                },
                "warming");
        warming.setDaemon(true);
        warming.start();
    }

    private static List<Screen> screens(Searches searches) {
        return List.of(
                new History(),
                new PersonScreen(Clock.system(ZoneId.systemDefault())),
                new PatternScreen(),
                new DrawingScreen(),
                new ChartScreen(),
                new TableScreen(),
                new EaseScreen(),
                new TrialScreen(),
                new ClothScreen(searches),
                new PrintScreen(),
                new StandingScreen());
    }

    private static void settings(JavalinConfig config) {
        config.startup.showJavalinBanner = false;
        config.startup.showOldJavalinVersionWarning = false;
        config.http.maxRequestSize = Guard.LARGEST_REQUEST_BYTES;
        config.jetty.multipartConfig.maxFileSize(Guard.LARGEST_REQUEST_BYTES, io.javalin.config.SizeUnit.BYTES);
        config.jetty.multipartConfig.maxTotalRequestSize(Guard.LARGEST_REQUEST_BYTES, io.javalin.config.SizeUnit.BYTES);
        config.jetty.multipartConfig.maxInMemoryFileSize(
                (int) Guard.LARGEST_REQUEST_BYTES, io.javalin.config.SizeUnit.BYTES);
        config.staticFiles.add(files -> {
            files.hostedPath = "/static";
            files.directory = "/trueseam/worktable/static";
            files.location = Location.CLASSPATH;
        });
        config.staticFiles.add(files -> {
            files.hostedPath = "/static/htmx";
            files.directory = "/META-INF/resources/webjars/htmx.org";
            files.location = Location.CLASSPATH;
        });
    }

    private static void failures(JavalinConfig config, Pages pages) {
        config.routes.exception(RefusedException.class, (e, ctx) -> say(ctx, pages, 403, e.getMessage()));
        config.routes.exception(AccountException.class, (e, ctx) -> say(ctx, pages, 422, e.getMessage()));
        config.routes.exception(UnknownMeasureException.class, (e, ctx) -> say(ctx, pages, 422, e.getMessage()));
        config.routes.exception(TooLargeException.class, (e, ctx) -> say(ctx, pages, 413, e.getMessage()));
        config.routes.exception(NoSuchProjectException.class, (e, ctx) -> say(ctx, pages, 404, e.getMessage()));
        config.routes.exception(ChangedElsewhereException.class, (e, ctx) -> say(ctx, pages, 409, e.getMessage()));
        config.routes.exception(ShelfException.class, (e, ctx) -> say(ctx, pages, 507, e.getMessage()));
        config.routes.exception(ArchiveException.class, (e, ctx) -> say(ctx, pages, 400, e.getMessage()));
        config.routes.exception(RecordBookException.class, (e, ctx) -> {
            LoggerFactory.getLogger(Worktable.class).error("The record book failed: {}", e.trouble(), e.getCause());
            say(ctx, pages, status(e.trouble()), e.getMessage());
        });
        config.routes.exception(Exception.class, (e, ctx) -> {
            LoggerFactory.getLogger(Worktable.class)
                    .error("A request failed: {}", ctx.path().replaceFirst("^/invited/.*", "/invited/..."), e);
            say(
                    ctx,
                    pages,
                    500,
                    "The program failed at this (" + e.getClass().getSimpleName()
                            + "); nothing that you typed is lost. Go back, or undo your last change.");
        });
        config.routes.error(404, ctx -> {
            if (ctx.attribute(SAID) == null) {
                say(ctx, pages, 404, "There is no such page; go to the list of projects.");
            }
        });
    }

    private static int status(Trouble trouble) {
        return switch (trouble) {
            case NO_ROOM -> 507;
            case NOT_REACHED, BUSY -> 503;
            case FAILING, NOT_ALLOWED, NOT_READABLE, REFUSED -> 500;
        };
    }

    /** A script and htmx get the sentence alone; a browser gets a page with it. */
    private static void say(Context context, Pages pages, int status, String sentence) {
        context.status(status);
        context.attribute(SAID, sentence);
        boolean page =
                String.valueOf(context.header("Accept")).contains("text/html") && context.header("HX-Request") == null;
        if (page) {
            context.html(pages.draw("start/sorry.jte", Map.of("sentence", sentence)));
        } else {
            context.contentType("text/plain; charset=utf-8").result(sentence);
        }
    }

    /**
     * Where it answers.
     *
     * @return the address of the first page
     */
    public String address() {
        return reach.address(server.port());
    }

    /**
     * A link for setting name and password of the studio's owner, for the first start and for a lost password. Earlier ones end.
     *
     * @return the link, good once and for seven days
     */
    public String ownerLink() {
        return address() + "invited/" + book.studio().accounts().invite(RecordBook.SINGLE_OWNER);
    }

    /**
     * Whether the studio has an owner with a password already.
     *
     * @return false at the first start
     */
    public boolean hasOwner() {
        return book.studio().accounts().hasOwner();
    }

    int port() {
        return server.port();
    }

    /** What it answers: method and path, for the test that tries each as everybody. */
    List<String> routes() {
        return server.unsafe.internalRouter.allHttpHandlers().stream()
                .map(parsed -> parsed.endpoint)
                .filter(endpoint -> endpoint.method.isHttpMethod())
                .map(endpoint -> endpoint.method.name() + " " + endpoint.path)
                .toList();
    }

    @Override
    public void close() {
        server.stop();
        searches.close();
        book.close();
        folder.close();
    }
}
