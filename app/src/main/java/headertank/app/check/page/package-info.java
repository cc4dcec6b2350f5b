/**
 * The pages of a check. {@link headertank.app.check.page.FirstScreen} answers go or not, why, and what first; each further page
 * has an address of its own, see {@link headertank.app.check.page.CheckTab}.
 */
package headertank.app.check.page;
