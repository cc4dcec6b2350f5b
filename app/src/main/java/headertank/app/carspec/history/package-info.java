/** What became of a spec: revisions beside each other, what a change costs, and all that happened to a car. */
package headertank.app.carspec.history;
