/** The shop's duties: those that come with the service, its own, and the rater that knows them all. */
package headertank.app.duty;
