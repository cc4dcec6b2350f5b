/**
 * The same schedule with one thing changed or broken: relay or ramp, the fan sensor in the hose, a blown fuse, a control that never
 * switches, lower set points ({@link headertank.calc.whatif.WhatIfs}). Switch and ramp share the set point, so that only the kind of
 * control differs. Each is judged by the same policies and rules as the rating and as unsure as it: the car as it stands has the very
 * verdict of its rating, a changed one that which a rating of it would give, within the error of the samples, and something broken moves
 * all samples by what it costs.
 */
package headertank.calc.whatif;
