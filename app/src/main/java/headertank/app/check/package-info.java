/** The technician's check: a stored rating of a revision, its pages, and who answers for it. */
package headertank.app.check;
