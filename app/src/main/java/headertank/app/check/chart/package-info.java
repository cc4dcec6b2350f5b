/** Drawings of a check: margins, the run over time, what would have been; geometry and words for page and paper. */
package headertank.app.check.chart;
