/** What was asked about a car that came back hot, which causes follow from it, and which test comes next. */
package headertank.app.incident.cause;
