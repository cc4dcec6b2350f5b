/** The radiator: core geometry and classes, air side, tube side, passes and effectiveness; heat and both pressure drops. */
package headertank.calc.radiator;
