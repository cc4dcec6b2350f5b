/** The catalogue as a file, out and in. {@code docs/parts-files.md} says how it is written. */
package headertank.app.part.file;
