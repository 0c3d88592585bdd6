package trueseam.worktable.project;

import java.nio.charset.StandardCharsets;
import java.security.SecureRandom;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.HexFormat;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.UnaryOperator;
import java.util.regex.Pattern;
import trueseam.records.Drawer;
import trueseam.records.pattern.KeptPattern;
import trueseam.records.person.Person;
import trueseam.records.project.KeptProject;
import trueseam.records.project.ProjectChange;
import trueseam.records.project.ProjectState;
import trueseam.records.project.Sought;
import trueseam.records.trouble.OutdatedException;

/**
 * The projects of one owner, and the files that were brought, in the record book. A change is kept with all that follows from it (the
 * person's days, the pattern, the sittings) before it is answered, or not at all. Safe for use by several threads.
 */
public final class Shelf {

    private static final Pattern MARK = Pattern.compile("[0-9a-f]{8,64}");

    /** Reading a project with all its states anew takes some milliseconds. */
    private static final int AT_HAND = 32;

    private final Drawer drawer;
    private final SecureRandom random = new SecureRandom();
    private final Map<String, Held> atHand = new LinkedHashMap<>(64, 0.75f, true) {
        private static final long serialVersionUID = 1;

        @Override
        protected boolean removeEldestEntry(Map.Entry<String, Held> eldest) {
            return size() > AT_HAND;
        }
    };

    /** A project with the numbers that its states have in the record book; a state is known by being the same object. */
    private record Held(Kept kept, IdentityHashMap<Kept.State, Long> numbers, KeptProject.Head head) {

        long last() {
            return numbers.values().stream().mapToLong(Long::longValue).max().orElse(0);
        }
    }

    /**
     * The shelf of an owner.
     *
     * @param drawer what the owner has in the record book
     */
    public Shelf(Drawer drawer) {
        this.drawer = drawer;
    }

    /**
     * What the owner has in the record book.
     *
     * @return people, patterns, sittings and all else
     */
    public Drawer drawer() {
        return drawer;
    }

    /**
     * All projects that are not put away.
     *
     * @return the last changed first
     */
    public List<KeptProject> list() {
        return drawer.projects().list(Sought.all());
    }

    /**
     * Begins a project for somebody new.
     *
     * @param project what is known
     * @return its mark
     */
    public String begin(Project project) {
        return begin(project, Optional.empty());
    }

    /**
     * Begins a project.
     *
     * @param project what is known
     * @param person the mark of a person in the record book; empty: she is new
     * @return its mark
     */
    public synchronized String begin(Project project, Optional<String> person) {
        byte[] bytes = new byte[8];
        random.nextBytes(bytes);
        String id = HexFormat.of().formatHex(bytes);
        put(id, Kept.begun(project), person);
        return id;
    }

    /** Puts a project with all its states into the record book, under the mark that it has. */
    synchronized void put(String id, Kept kept, Optional<String> person) {
        Held none = new Held(kept, new IdentityHashMap<>(), new KeptProject.Head("", person, Optional.empty(), ""));
        Held held = drawer.together(all -> write(all, id, none, kept, true));
        atHand.put(id, held);
    }

    /**
     * A person of the record book as a project begins with her: all her days.
     *
     * @param id her mark
     * @return the person, if there is one
     */
    public Optional<PersonPart> person(String id) {
        return drawer.people()
                .find(id)
                .map(person -> new PersonPart(
                        person.label(),
                        person.units(),
                        person.population(),
                        Derived.typed(drawer.days().of(id))));
    }

    /**
     * A project with its earlier states.
     *
     * @param id its mark
     * @return the project
     * @throws NoSuchProjectException if there is none
     */
    public synchronized Kept kept(String id) {
        return held(id).kept();
    }

    /** What is at hand counts only while it has the version of the record book: another program may share that. */
    private Held held(String id) {
        KeptProject now = drawer.projects().find(checked(id)).orElseThrow(NoSuchProjectException::new);
        Held held = atHand.get(id);
        if (held == null || held.kept().version() != now.version()) {
            held = read(now);
            atHand.put(id, held);
        }
        return held;
    }

    /**
     * The version of a project that was last read or written here. For whoever has just read it: another program may have gone on since,
     * which {@link #change} finds out by itself.
     *
     * @param id its mark
     * @return the version
     * @throws NoSuchProjectException if there is none
     */
    public synchronized long lastSeenVersion(String id) {
        return heldSo(id).kept().version();
    }

    /** What is at hand is not asked for again where it is about to be written: a write on another version is refused by the record book. */
    private Held heldSo(String id) {
        Held held = atHand.get(id);
        return held == null ? held(id) : held;
    }

    private Held read(KeptProject now) {
        IdentityHashMap<Kept.State, Long> numbers = new IdentityHashMap<>();
        List<Kept.State> states = new ArrayList<>();
        int at = 0;
        for (ProjectState state : drawer.projects().states(now.id())) {
            if (state.number() == now.state()) {
                at = states.size();
            }
            Kept.State typed = new Kept.State(state.label(), state.field(), ProjectText.project(state.content()));
            states.add(typed);
            numbers.put(typed, state.number());
        }
        if (states.isEmpty()) {
            throw new NoSuchProjectException(); // deleted between the two questions
        }
        return new Held(new Kept(now.version(), at, states), numbers, now.head());
    }

    /**
     * Changes a project.
     *
     * @param id its mark
     * @param version the version that was changed
     * @param how the change, from what is kept now to what shall be
     * @return what is kept now
     * @throws ChangedElsewhereException if it has another version; nothing is changed then
     */
    public synchronized Kept change(String id, long version, UnaryOperator<Kept> how) {
        Held now = heldSo(id);
        if (now.kept().version() != version) {
            throw new ChangedElsewhereException(now.kept().version());
        }
        Kept changed = how.apply(now.kept());
        if (changed.version() != version) {
            atHand.remove(id); // if it fails, what is in the record book is looked at anew
            try {
                atHand.put(id, drawer.together(all -> write(all, id, now, changed, false)));
            } catch (OutdatedException e) {
                throw new ChangedElsewhereException(version + 1);
            }
        }
        return changed;
    }

    private static Held write(Drawer all, String id, Held before, Kept changed, boolean begun) {
        Project was = begun ? Project.named("") : before.kept().project();
        Project project = changed.project();
        Optional<String> person = person(all, before.head().person(), was.person(), project.person());
        Optional<String> pattern = Derived.pattern(id, was).equals(Derived.pattern(id, project))
                ? before.head().pattern()
                : pattern(all, id, before.head().pattern(), project);
        KeptProject.Head head = new KeptProject.Head(
                project.name(), person, pattern, project.pattern().size());
        IdentityHashMap<Kept.State, Long> numbers = states(all, id, before, changed, head, begun);
        boolean first = before.head().person().isEmpty() || begun;
        if (person.isPresent()
                && (first || !was.person().days().equals(project.person().days()))) {
            all.days().replaceOf(id, person.get(), Derived.days(project.person()));
        }
        if (!was.trial().equals(project.trial())) {
            all.sittings().replaceOf(id, Derived.sittings(project));
        }
        before.head().pattern().filter(old -> !pattern.equals(Optional.of(old))).ifPresent(old -> drop(all, old));
        return new Held(changed, numbers, head);
    }

    /** She is kept as soon as there is something of her; what is typed of her goes on with her. */
    private static Optional<String> person(Drawer all, Optional<String> id, PersonPart was, PersonPart now) {
        String label = now.label().strip();
        if (id.isEmpty()) {
            boolean somebody = !label.isEmpty()
                    || now.days().stream().anyMatch(day -> !day.readings().isEmpty());
            return somebody
                    ? Optional.of(all.people()
                            .add(Person.named(label, now.units(), now.people()))
                            .id())
                    : Optional.empty();
        }
        boolean same = label.equals(was.label().strip())
                && now.units().equals(was.units())
                && now.people().equals(was.people());
        if (!same) {
            all.people()
                    .find(id.get())
                    .map(person -> person.with(label.isEmpty() ? person.label() : label, now.units(), now.people()))
                    .ifPresent(all.people()::change);
        }
        return id;
    }

    private static Optional<String> pattern(Drawer all, String id, Optional<String> was, Project now) {
        Optional<KeptPattern> pattern = Derived.pattern(id, now)
                .filter(one -> one.files().stream().allMatch(file -> all.files().has(file.mark())));
        if (pattern.isPresent() && was.isPresent()) {
            Optional<KeptPattern> kept = all.patterns().find(was.get());
            if (kept.map(KeptPattern::madeOf).equals(pattern.map(KeptPattern::madeOf))) {
                return was;
            }
        }
        return pattern.map(one -> all.patterns().keep(one).id());
    }

    private static void drop(Drawer all, String pattern) {
        all.patterns().find(pattern).filter(Derived::isMadeHere).ifPresent(one -> all.patterns()
                .delete(one.id()));
    }

    private static IdentityHashMap<Kept.State, Long> states(
            Drawer all, String id, Held before, Kept changed, KeptProject.Head head, boolean begun) {
        IdentityHashMap<Kept.State, Long> numbers = new IdentityHashMap<>();
        List<ProjectState> added = new ArrayList<>();
        long next = before.last() + 1;
        for (Kept.State state : changed.states()) {
            Long number = before.numbers().get(state);
            if (number == null) {
                number = next++;
                added.add(new ProjectState(number, state.label(), state.field(), ProjectText.of(state.project())));
            }
            numbers.put(state, number);
        }
        Set<Long> staying = new HashSet<>(numbers.values());
        List<Long> dropped = before.numbers().values().stream()
                .filter(number -> !staying.contains(number))
                .toList();
        ProjectChange change = new ProjectChange(
                id,
                begun ? 0 : before.kept().version(),
                changed.version(),
                head,
                numbers.get(changed.states().get(changed.at())),
                dropped,
                added);
        if (begun) {
            all.projects().begin(change);
        } else {
            all.projects().change(change);
        }
        return numbers;
    }

    /**
     * Deletes a project for good. The measures of the person stay with her.
     *
     * @param id its mark
     */
    public synchronized void delete(String id) {
        drawer.together(all -> {
            Optional<KeptProject> project = all.projects().find(checked(id));
            boolean deleted = all.projects().delete(id);
            project.flatMap(gone -> gone.head().pattern()).ifPresent(pattern -> drop(all, pattern));
            return deleted;
        });
        atHand.remove(id);
    }

    /**
     * Keeps the text of a file that was brought.
     *
     * @param text the text
     * @return its shelf mark, the same for the same text
     */
    public String keepFile(String text) {
        return keepFile(text.getBytes(StandardCharsets.UTF_8));
    }

    /**
     * Keeps a file that was brought.
     *
     * @param content what is in it
     * @return its shelf mark, the same for the same content
     */
    public String keepFile(byte[] content) {
        return drawer.files().keep(content);
    }

    /**
     * The text of a file that was brought.
     *
     * @param mark its shelf mark
     * @return the text
     */
    public String file(String mark) {
        return new String(bytes(mark), StandardCharsets.UTF_8);
    }

    /**
     * A file that was brought.
     *
     * @param mark its shelf mark
     * @return what is in it
     */
    public byte[] bytes(String mark) {
        return drawer.files()
                .read(checked(mark))
                .orElseThrow(() -> new ShelfException(
                        "The pattern file of this project is not in the record book any more; bring it again.", null));
    }

    private static String checked(String mark) {
        if (!MARK.matcher(mark).matches()) {
            throw new NoSuchProjectException();
        }
        return mark;
    }
}
