/**
 * What would help, each re-rated for this car by itself: changes that buy margin ({@link headertank.calc.advice.Advice}, its
 * candidates in {@code PossibleChange}), ranked by what they buy in the duty that needs it most; and values worth measuring
 * ({@link headertank.calc.advice.NextToMeasure}), ranked by how much of the margin's spread they cause, one standard deviation at a
 * time. Two changes together buy less or more than the sum of both, and no line claims otherwise.
 */
package headertank.calc.advice;
