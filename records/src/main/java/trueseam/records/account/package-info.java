/**
 * Accounts of a studio or a school: who may sign in and as what, who is signed in, and how the first password is set by an invitation.
 * No password and no token can be read out of the record book. Who uses the program alone needs none of it.
 */
package trueseam.records.account;
