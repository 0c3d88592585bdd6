package trueseam.worktable.page;

/** One screen: it says which addresses it answers. */
public interface Screen {

    /**
     * Names the addresses.
     *
     * @param routes where to name them
     */
    void answer(Routes routes);
}
