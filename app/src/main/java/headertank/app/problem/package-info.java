/** What goes wrong and how it is told: problem details for programs, plain pages for people. */
package headertank.app.problem;
