/** What stands between strangers and the shop: the brake on signing in, sessions, cookies and what a stranger may hold. */
package headertank.app.account.guard;
