/** What all forms share: a key, so that a form that is sent twice makes one record, and a summary of what is wrong with it. */
package headertank.app.form;
