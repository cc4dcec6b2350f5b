/**
 * One car at one duty, judged as the duty says: by steady states of its points, by the peak of its run with the steady state of its
 * idling points, or by the worse of both ({@link headertank.calc.judged.DutyRater}). The point with the smallest margin decides; for
 * a peak in the run it is the phase that heated the car, never a soak. A car without a steady state where the duty needs one has no
 * margin but a bound. With uncertainty, each sampled car is judged in the same way, and one outside what a model accepts counts as
 * beyond every limit.
 */
package headertank.calc.judged;
