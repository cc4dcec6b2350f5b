/** What was asked for and until when, where each job stands, and the page that each day begins with. */
package headertank.app.job;
