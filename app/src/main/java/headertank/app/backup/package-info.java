/** One file that holds all records: made while people work, and brought back into an empty database by a start that proves it. */
package headertank.app.backup;
