/** A car came back hot: what was seen, held against the last good check, and what changed since. */
package headertank.app.incident;
