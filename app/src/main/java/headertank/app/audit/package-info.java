/** Who did what: rows that are only ever added. */
package headertank.app.audit;
