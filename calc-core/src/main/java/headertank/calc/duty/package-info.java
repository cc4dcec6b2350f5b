/**
 * Ways of using a car. A {@link headertank.calc.duty.Duty} has operating points, each with what it asks of the engine
 * ({@link headertank.calc.duty.Demand}: idle, road load, a mix of modes, engine off), and may have a schedule of phases. It says
 * what it is judged by: steady states, the peak of the run with the steady state of idling, or the worse of both.
 *
 * <p>Road load is rolling, air and slope; mixes keep the concavity of heat in load. The figures of
 * {@link headertank.calc.duty.StandardDuties} are modelling choices: a duty file ({@link headertank.calc.duty.ScheduleCsv}) or a
 * reduced log of the car ({@link headertank.calc.duty.LoggedLap}) replaces them, other duties come from a
 * {@link headertank.calc.duty.DutySource}.
 */
package headertank.calc.duty;
