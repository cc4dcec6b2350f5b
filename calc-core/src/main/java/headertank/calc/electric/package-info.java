/**
 * Fans, alternator and battery. The alternator gives more the faster it turns, up to its rating; fans take more the higher the
 * voltage; when the load passes what it gives, the voltage falls to that of the battery
 * ({@link headertank.calc.electric.ElectricBalance}). A relay starts a fan at several times its running current for a moment, a
 * controller winds it up ({@link headertank.calc.electric.FanStart}). {@link headertank.calc.electric.AlternatorSpec} says what is
 * assumed of the machine.
 */
package headertank.calc.electric;
