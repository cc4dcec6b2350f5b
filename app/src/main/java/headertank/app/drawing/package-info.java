/** Drawings of a checked car: where its cooling parts sit, what flows through them, and the curves that meet in its state. */
package headertank.app.drawing;
