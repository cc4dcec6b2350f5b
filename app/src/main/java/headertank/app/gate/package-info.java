/**
 * Whether a car may leave: the one state machine of job, check and check list. {@link headertank.app.gate.Standing} says where a
 * car stands, {@link headertank.app.gate.Step} what may be done with it there; the view {@code car_standing} and the triggers
 * beside it hold the same in the database. Drawn in {@code docs/gate.md}.
 */
package headertank.app.gate;
