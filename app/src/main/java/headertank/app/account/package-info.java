/**
 * Accounts, signing in, and the one table that says which role may use which route.
 *
 * <p>Why so many: the first owner, signing in, a password that is replaced, going on after a session that ended, and the gate of every route share one chain of
 * security rules; each page and form of these few routes is a small type of its own.
 */
package headertank.app.account;
