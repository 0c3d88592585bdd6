package trueseam.benchmarks;

import java.io.IOException;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import trueseam.garment.measure.Measure;
import trueseam.records.RecordBook;
import trueseam.records.account.Accounts;
import trueseam.records.account.Role;
import trueseam.worktable.project.Kept;
import trueseam.worktable.project.PatternPart;
import trueseam.worktable.project.PersonPart;
import trueseam.worktable.project.Project;
import trueseam.worktable.project.Shelf;

/**
 * How long does a save take through a running studio when fifty people are signed in, and is any lost? Each types readings into the Person
 * screen of a project of her own, one a second by the clock, through the address that the screen posts to, and gets the whole answer, packed
 * as a browser asks for it. A pattern is chosen, so that each answer has a whole fit worked out for it.
 *
 * <p>A save is timed from the moment at which it was due to the last byte of its answer. At the end the record book has to have every
 * save that was answered: as many versions, and each measure as it was typed last. Arguments: the studio's address, that of its database
 * (the studio keeps running on it), cold seconds, warm seconds, the process of the studio, the process of the database.
 */
public final class FiftySignedIn {

    private static final int PEOPLE = 50;
    private static final long PAUSE_MS = 1_000;
    private static final String PASSWORD = "four words for measuring";
    private static final Pattern SECRET = Pattern.compile("name=\"secret\" content=\"([0-9a-f]+)\"");
    private static final List<String> GARMENTS = List.of("bodice", "skirt", "trousers", "dress");

    /** Invented measures, in millimetres. */
    private static final Map<Measure, Integer> MEASURES = new EnumMap<>(Map.ofEntries(
            Map.entry(Measure.STATURE, 1650),
            Map.entry(Measure.BUST_GIRTH, 960),
            Map.entry(Measure.UPPER_CHEST_GIRTH, 880),
            Map.entry(Measure.WAIST_GIRTH, 760),
            Map.entry(Measure.HIP_GIRTH, 1010),
            Map.entry(Measure.BACK_WAIST_LENGTH, 410),
            Map.entry(Measure.SHOULDER_LENGTH, 125),
            Map.entry(Measure.UPPER_ARM_GIRTH, 300),
            Map.entry(Measure.BODY_RISE, 275),
            Map.entry(Measure.FRONT_CROTCH_LENGTH, 305),
            Map.entry(Measure.BACK_CROTCH_LENGTH, 370)));

    private final HttpClient client = HttpClient.newBuilder()
            .version(HttpClient.Version.HTTP_1_1)
            .followRedirects(HttpClient.Redirect.NEVER)
            .build();
    private final String address;
    private final RecordBook book;

    private FiftySignedIn(String address, RecordBook book) {
        this.address = address.replaceFirst("/$", "");
        this.book = book;
    }

    /** One of the fifty at her screen; used by one thread. */
    private final class Person implements Pace.Save {
        private final long account;
        private final String project;
        private final String cookie;
        private final String secret;
        private final Map<Measure, String> typed = new EnumMap<>(Measure.class);
        private String version;
        private int saves;
        private Measure next = Measure.STATURE;

        Person(long account, String name, String project) throws IOException, InterruptedException {
            this.account = account;
            this.project = project;
            String nobody = secretIn(get("/sign-in", "").body());
            HttpResponse<String> signedIn = client.send(
                    post("/sign-in", "", nobody, "name=" + name + "&password=" + encoded(PASSWORD)),
                    BodyHandlers.ofString());
            this.cookie = signedIn.headers()
                    .firstValue("Set-Cookie")
                    .orElseThrow(() -> new IllegalStateException("not signed in: " + signedIn.body()))
                    .replaceAll(";.*", "");
            HttpResponse<String> page = get("/p/" + project + "/person", cookie);
            this.secret = secretIn(page.body());
            this.version = shown(page);
        }

        /** The next field; what was typed into it is a millimetre more each time round, so that a lost one shows. */
        @Override
        public int made() throws IOException, InterruptedException {
            Measure measure = List.copyOf(MEASURES.keySet()).get(saves % MEASURES.size());
            String text = (MEASURES.get(measure) + 1 + saves / MEASURES.size() % 40) + " mm";
            HttpRequest request = post(
                    "/p/" + project + "/person/read",
                    cookie,
                    secret,
                    "measure=" + measure + "&side=&at=0&text=" + encoded(text) + "&version=" + version + "&tab=one");
            HttpResponse<byte[]> answer = client.send(request, BodyHandlers.ofByteArray());
            if (answer.statusCode() != 200) {
                throw new IllegalStateException(
                        "answered " + answer.statusCode() + ": " + new String(answer.body(), StandardCharsets.UTF_8));
            }
            version = shown(answer);
            typed.put(measure, text);
            saves++;
            next = measure;
            return 0;
        }

        /** The screen draws its figure anew after each reading; that is no part of the save, but the studio has it to do. */
        @Override
        public void after() throws IOException, InterruptedException {
            client.send(
                    packed("/p/" + project + "/person/look?measure=" + next + "&side=", cookie)
                            .build(),
                    BodyHandlers.ofByteArray());
        }

        /** How many of her saves the record book does not have. */
        int lost() {
            Kept kept = new Shelf(book.drawer(account)).kept(project);
            List<PersonPart.Typed> readings = kept.project().person().today().readings();
            long wrong = typed.entrySet().stream()
                    .filter(one -> readings.stream()
                            .noneMatch(r -> r.measure().equals(one.getKey().term())
                                    && r.text().equals(one.getValue())))
                    .count();
            return (int) Math.max(wrong, saves + 1L - kept.version());
        }
    }

    /**
     * Runs it.
     *
     * @param args as the class says
     * @throws Exception if a session failed
     */
    public static void main(String[] args) throws Exception {
        try (RecordBook book = RecordBook.open(args[1], Optional.empty(), Clock.systemUTC())) {
            FiftySignedIn run = new FiftySignedIn(args[0], book);
            List<Person> people = run.people();
            Pace pace = Pace.now(Long.parseLong(args[2]), Long.parseLong(args[3]), PAUSE_MS);
            CpuTime studio = CpuTime.of(Long.parseLong(args[4]), pace);
            CpuTime database = CpuTime.of(Long.parseLong(args[5]), pace);
            List<Callable<SaveTimes>> sessions = new ArrayList<>();
            for (Person person : people) {
                sessions.add(() -> pace.kept(person.account, person));
            }
            SaveTimes times = SaveTimes.of(SaveTimes.together(sessions));
            String cost = studio.each("studio", times.warmNs().size()) + ", "
                    + database.each("database", times.warmNs().size());
            int lost = people.stream().mapToInt(Person::lost).sum();
            times.print("HTTP: " + PEOPLE + " signed in, a project each", lost);
            System.out.println("  of the processors, each warm save: " + cost);
            if (lost != 0) {
                System.exit(1);
            }
        }
    }

    private List<Person> people() throws IOException, InterruptedException {
        Accounts accounts = book.studio().accounts();
        List<Person> people = new ArrayList<>();
        for (int i = 0; i < PEOPLE; i++) {
            String name = "person" + i;
            long account = accounts.add(name, Role.STUDENT).id();
            accounts.enter(accounts.invite(account), name, name, PASSWORD);
            people.add(new Person(account, name, new Shelf(book.drawer(account)).begin(begun(i))));
        }
        return people;
    }

    private static Project begun(int i) {
        List<PersonPart.Typed> readings = MEASURES.entrySet().stream()
                .map(one -> new PersonPart.Typed(one.getKey().term(), "", one.getValue() + " mm", "cm"))
                .toList();
        String garment = GARMENTS.get(i % GARMENTS.size());
        return Project.named("Project " + i)
                .with(new PersonPart("Nobody", "cm", List.of(new PersonPart.Day("2026-11-26", readings, ""))))
                .with(new PatternPart("draft", garment, List.of(), "misses", "14", "", "", Map.of()));
    }

    private HttpResponse<String> get(String path, String cookie) throws IOException, InterruptedException {
        return client.send(asked(path, cookie).build(), BodyHandlers.ofString());
    }

    private HttpRequest post(String path, String cookie, String secret, String form) {
        return packed(path, cookie)
                .header("Content-Type", "application/x-www-form-urlencoded")
                .header("Trueseam-Secret", secret)
                .POST(BodyPublishers.ofString(form))
                .build();
    }

    private HttpRequest.Builder packed(String path, String cookie) {
        return asked(path, cookie).header("HX-Request", "true").header("Accept-Encoding", "gzip, deflate");
    }

    private HttpRequest.Builder asked(String path, String cookie) {
        HttpRequest.Builder request =
                HttpRequest.newBuilder(URI.create(address + path)).header("Accept", "text/html");
        return cookie.isEmpty() ? request : request.header("Cookie", cookie);
    }

    private static String shown(HttpResponse<?> answer) {
        return answer.headers().firstValue("Trueseam-Version").orElseThrow();
    }

    private static String secretIn(String page) {
        Matcher secret = SECRET.matcher(page);
        if (!secret.find()) {
            throw new IllegalStateException("a page without a secret: " + page);
        }
        return secret.group(1);
    }

    private static String encoded(String text) {
        return URLEncoder.encode(text, StandardCharsets.UTF_8);
    }
}
