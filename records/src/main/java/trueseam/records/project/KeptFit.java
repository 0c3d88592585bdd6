package trueseam.records.project;

import java.util.Optional;

/**
 * What a project was fitted to, once: plan, result and proofs.
 *
 * @param id its mark; empty before it is kept
 * @param project the project's mark
 * @param projectVersion the version of the project that was fitted
 * @param proved whether every proof held
 * @param report the mark of the file with plan, result and proofs
 * @param altered the mark of the file with the altered pattern; none of a paper pattern
 * @param madeAt milliseconds since 1970; 0 before it is kept
 */
public record KeptFit(
        String id,
        String project,
        long projectVersion,
        boolean proved,
        String report,
        Optional<String> altered,
        long madeAt) {}
