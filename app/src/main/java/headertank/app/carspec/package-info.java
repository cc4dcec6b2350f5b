/** What is known of a car's cooling: the form, its immutable revisions, their history and what each change cost. */
package headertank.app.carspec;
