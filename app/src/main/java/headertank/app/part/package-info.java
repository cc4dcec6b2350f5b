/** The shop's own catalogue of parts, and which revision of which car names which part. */
package headertank.app.part;
