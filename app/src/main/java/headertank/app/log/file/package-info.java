/**
 * Logs as files: from bytes to rows of cells and seconds, in constant memory, whatever the encoding, the separator and the way
 * time is written. What the columns mean is not known here.
 */
package headertank.app.log.file;
