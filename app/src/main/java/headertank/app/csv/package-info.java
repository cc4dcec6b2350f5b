/** Comma-separated text: in, and out so that no spreadsheet takes a cell for a formula. */
package headertank.app.csv;
