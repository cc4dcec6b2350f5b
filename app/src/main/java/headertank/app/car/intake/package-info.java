/** A car that is new here: what is guessed from a search, and which cars look alike. */
package headertank.app.car.intake;
