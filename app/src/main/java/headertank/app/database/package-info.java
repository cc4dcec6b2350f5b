/** The built-in PostgreSQL, its folder, and what every feature shares when it talks to the database. */
package headertank.app.database;
