/**
 * The same schedule with one thing changed or broken: relay or ramp, the fan sensor in the hose, a blown fuse, a control that never
 * switches, lower set points ({@link headertank.calc.whatif.WhatIfs}). Switch and ramp share the set point, so that only the kind of
 * control differs. Each is judged by the same policies as the rating, on what fans can move: margins of coolant, boiling and oil.
 */
package headertank.calc.whatif;
