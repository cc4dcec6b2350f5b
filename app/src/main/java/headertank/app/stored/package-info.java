/** Text as it is kept for good: canonical JSON, so that what is equal has one form, and its hash. */
package headertank.app.stored;
