/** Accounts, signing in, and the one table that says which role may use which route. */
package headertank.app.account;
