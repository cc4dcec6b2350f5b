/** In which language pages are read, and words in that language for what calc-core says in English. */
package headertank.app.language;
