package trueseam.app.command;

import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import java.util.function.Supplier;

/** Makes several things side by side, each in a thread of its own, so that a cold start uses all cores. */
final class Together {

    /**
     * Begins to make something.
     *
     * @param maker makes it; shares nothing that changes with the others
     * @return waits for it and hands it over, or throws what the maker threw
     */
    <T> Supplier<T> make(Supplier<T> maker) {
        CompletableFuture<T> made = CompletableFuture.supplyAsync(maker, task -> {
            Thread thread = new Thread(task, "trueseam-file");
            thread.setDaemon(true);
            thread.start();
        });
        return () -> {
            try {
                return made.join();
            } catch (CompletionException e) {
                if (e.getCause() instanceof RuntimeException own) {
                    throw own;
                }
                throw e;
            }
        };
    }
}
