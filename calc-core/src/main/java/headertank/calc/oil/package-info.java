/**
 * One node of engine oil between what heats it and what cools it: {@code Q_o = UA_oc (T_o - T_b) + UA_oa (T_o - T_a)}, by the
 * block and a plate cooler to the coolant, by the sump and an air cooler to the air
 * ({@link headertank.calc.oil.OilBalance}). The conductances of {@link headertank.calc.oil.OilSpec} are modelling choices with a
 * wide spread; an oil temperature read on the car replaces them. An air cooler may have a thermostat
 * ({@link headertank.calc.oil.OilThermostat}), which keeps oil warm on a cold day and takes a little on a hot one.
 */
package headertank.calc.oil;
