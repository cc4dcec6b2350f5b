/** What counts as a password, and changing one’s own. */
package headertank.app.account.password;
