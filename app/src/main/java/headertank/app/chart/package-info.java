/**
 * Curves over an axis, for pages and paper: one scale, one set of marks, one chart of panels below each other. Features say what
 * is drawn; {@code templates/chart/curves.html} draws it.
 */
package headertank.app.chart;
