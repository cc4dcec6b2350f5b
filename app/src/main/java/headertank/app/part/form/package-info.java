/** The form of a part: what was typed, what is wrong with it, and what somebody else saved meanwhile. */
package headertank.app.part.form;
