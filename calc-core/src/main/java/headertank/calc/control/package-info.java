/**
 * How electric fans are switched by a sensed temperature: one relay with a hysteresis, two relays, a ramp, a controller's table,
 * always, never ({@link headertank.calc.control.FanControlSpec}). Pure functions: the duty now follows from the temperature and the
 * duty before ({@link headertank.calc.control.FanController}), and as stages with edges for a run that must stop exactly where a
 * fan starts ({@link headertank.calc.control.FanStages}). Set points and bands that nobody stated are common practice, no
 * source.
 */
package headertank.calc.control;
