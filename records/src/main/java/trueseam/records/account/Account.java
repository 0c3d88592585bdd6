package trueseam.records.account;

/**
 * Somebody who may use the program.
 *
 * @param id the number that her rows belong to
 * @param name what she is called
 * @param signIn the name that she signs in with; empty until she set a password
 * @param role what she may do
 * @param closed whether she may not sign in any more
 */
public record Account(long id, String name, String signIn, Role role, boolean closed) {}
