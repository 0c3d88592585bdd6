package trueseam.records.project;

import java.util.List;

/** What the projects of one owner came to, and what was printed of it. Safe for use by several threads. */
public interface Fits {

    /**
     * Keeps a fit; one of the same version of the project with the same report is kept once.
     *
     * @param fit the fit; mark and time are given here, its files are kept already
     * @return the fit as kept
     */
    KeptFit keep(KeptFit fit);

    /**
     * The fits of a project.
     *
     * @param project its mark
     * @return the latest first
     */
    List<KeptFit> of(String project);

    /**
     * Keeps that something was printed.
     *
     * @param print the print; mark and time are given here
     * @return the print as kept
     */
    KeptPrint printed(KeptPrint print);

    /**
     * What was printed of a project.
     *
     * @param project its mark
     * @return the latest first
     */
    List<KeptPrint> prints(String project);
}
