/** What the owner decides for the whole shop. */
package headertank.app.settings;
