package trueseam.worktable.studio;

import io.javalin.http.Context;
import java.time.Clock;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import trueseam.records.Drawer;
import trueseam.records.RecordBook;
import trueseam.records.account.Account;
import trueseam.records.account.Role;
import trueseam.records.group.SharedProject;
import trueseam.records.project.KeptProject;
import trueseam.worktable.page.Desk;
import trueseam.worktable.page.Pages;
import trueseam.worktable.page.RefusedException;
import trueseam.worktable.page.Seats;
import trueseam.worktable.page.Signed;
import trueseam.worktable.project.Shelf;

/**
 * One desk for each account. A request reaches the rows of whoever is signed in; the one way to anybody else's is a project that a
 * student of one's own class shares, and only to look. Whoever opens a project is noted in the trail of its owner.
 */
public final class StudioSeats implements Seats {

    /** A school class and some more at once; each has the projects of its account at hand. */
    private static final int DESKS_AT_HAND = 64;

    private static final String PROJECTS = "/p/";

    private static final String PEOPLE = "/people/";

    private static final String ERASE = "/erase";

    private final Supplier<RecordBook> book;
    private final Gate gate;
    private final Pages pages;
    private final Trail trail;
    private final Map<Long, Desk> desks = Collections.synchronizedMap(new LinkedHashMap<>(64, 0.75f, true) {
        private static final long serialVersionUID = 1;

        @Override
        protected boolean removeEldestEntry(Map.Entry<Long, Desk> eldest) {
            return size() > DESKS_AT_HAND;
        }
    });

    /**
     * For the server.
     *
     * @param book gives the record book, once it is open
     * @param gate says who asks
     * @param pages how pages are drawn
     * @param clock what time it is
     */
    public StudioSeats(Supplier<RecordBook> book, Gate gate, Pages pages, Clock clock) {
        this.book = book;
        this.gate = gate;
        this.pages = pages;
        this.trail = new Trail(clock);
    }

    @Override
    public Seat of(Context context) {
        Account account = account(context);
        if (!context.path().startsWith(PROJECTS)) {
            noteOwn(context, account);
            return seat(context, account, account.id(), "");
        }
        String id = context.pathParam("id");
        Drawer own = drawer(account);
        Optional<KeptProject> project = own.projects().find(id);
        if (project.isPresent()) {
            note(context, account, own, project.get());
            return seat(context, account, account.id(), "");
        }
        Optional<SharedProject> shared = account.role().leads() ? own.sharing().find(id) : Optional.empty();
        if (shared.isEmpty()) {
            return seat(context, account, account.id(), ""); // where there is no such project
        }
        if (!context.method().name().equals("GET")) {
            throw new RefusedException("This project is " + shared.get().student()
                    + "'s and shared with you to look at, so nothing was changed.");
        }
        Drawer hers = book.get().drawer(shared.get().owner());
        hers.projects().find(id).ifPresent(one -> note(context, account, hers, one));
        return seat(context, account, hers.owner(), shared.get().student());
    }

    /** A person's own page shows her measures; erasing her is noted by the record book. */
    private void noteOwn(Context context, Account who) {
        if (!context.path().startsWith(PEOPLE) || context.path().endsWith(ERASE)) {
            return;
        }
        String id = context.pathParam("id");
        Drawer own = drawer(who);
        if (own.people().find(id).isPresent()) {
            trail.note(own, who.id(), id, id, did(context) + "her page");
        }
    }

    private static String did(Context context) {
        return context.method().name().equals("GET") ? "looked at " : "worked on ";
    }

    /** Every page of a project is worked out of her measures. */
    private void note(Context context, Account who, Drawer drawer, KeptProject project) {
        project.head()
                .person()
                .ifPresent(person -> trail.note(drawer, who.id(), person, project.id(), did(context) + "a project"));
    }

    /** Nothing of an erased account stays at hand. */
    void forget(long account) {
        desks.remove(account);
    }

    private Seat seat(Context context, Account who, long owner, String whose) {
        Desk desk = desks.computeIfAbsent(owner, id -> {
            Shelf shelf = new Shelf(book.get().drawer(id));
            return new Desk(() -> shelf);
        });
        return new Seat(desk, pages(context, who, whose));
    }

    /** How pages are drawn for whoever asks. */
    Pages pages(Context context, Account who, String whose) {
        Signed signed = new Signed(who.name(), who.role().leads(), who.role() == Role.OWNER, whose);
        return pages.forSession(gate.secret(context), signed);
    }

    Account account(Context context) {
        return gate.account(context).orElseThrow(() -> new RefusedException("You are signed out; sign in again."));
    }

    Drawer drawer(Account account) {
        return book.get().drawer(account.id());
    }
}
