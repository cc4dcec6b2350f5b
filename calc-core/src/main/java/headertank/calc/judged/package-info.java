/** One car at one duty: which steady points and which run decide, and how far that may be off. */
package headertank.calc.judged;
