/**
 * Logs of a car, kept as they were read, and what they teach: the car driven again over its own log before and after learning from it,
 * and how its margins change. A check does not use it yet.
 */
package headertank.app.carlog;
