/**
 * What a car should show when it is started cold and left idling in the workshop, and how far a reading may be from that before it
 * says something: 5 to 95 % of sampled cars, widened by what a watch, a gauge, a clamp meter and a contact thermometer are good for
 * ({@link headertank.calc.workshop.IdleInWorkshop}; modelling choices).
 */
package headertank.calc.workshop;
