/** What a car is asked to do: operating points at a steady state and schedules over time. */
package headertank.calc.duty;
