/** Properties of what flows through a car's cooling: water, glycol mixtures, moist air, engine oil, fuel; with ranges and spreads. */
package headertank.calc.fluid;
