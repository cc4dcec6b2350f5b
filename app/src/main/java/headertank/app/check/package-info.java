/**
 * The technician's check: a stored rating of a revision, its pages, and who answers for it. The records are in {@code stored},
 * what fills them in {@code snapshot}, what shows them in {@code figure} and {@code chart}.
 */
package headertank.app.check;
