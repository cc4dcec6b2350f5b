/** A check as it is stored: its records, its formats, and who signed it. Nothing here computes. */
package headertank.app.check.stored;
