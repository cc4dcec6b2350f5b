/**
 * What a temperature sensor shows and how slowly. The temperature that matters is the one in head or block; a sensor in a hose or
 * tank shows coolant that has to reach it first, and drifts towards the air when nothing flows
 * ({@link headertank.calc.sensor.SensorReading} has the mixing formula, derived, and its modelling choices). How it is fitted sets
 * its own lag ({@link headertank.calc.sensor.SensorMount}).
 */
package headertank.calc.sensor;
