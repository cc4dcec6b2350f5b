/** What leaves the shop on paper. */
package headertank.app.print;
