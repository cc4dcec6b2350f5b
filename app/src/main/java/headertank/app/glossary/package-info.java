/** What the words on the pages mean. */
package headertank.app.glossary;
