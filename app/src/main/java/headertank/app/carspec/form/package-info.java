/** The form of a spec: filled, read, previewed while somebody types, and joined with what somebody else saved. */
package headertank.app.carspec.form;
