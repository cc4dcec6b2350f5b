/**
 * Heat through the panel over the engine. It passes a panel in series: air film with radiation inside, the sheet, air film
 * with radiation outside ({@link headertank.calc.hood.HoodPanel}); films are forced convection along a plate
 * ({@link headertank.calc.hood.AirFilm}, after Incropera and DeWitt, from memory), materials after DIN EN 12524:2000 where it gives
 * them ({@link headertank.calc.hood.HoodMaterial}).
 */
package headertank.calc.hood;
