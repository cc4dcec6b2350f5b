/** In which language pages are read, and words in that language, with figures in the shop's units, for what calc-core says. */
package headertank.app.language;
