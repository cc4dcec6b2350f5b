/** A duty from a log of time, road speed, engine speed and load. */
package headertank.app.duty.log;
