/**
 * From what was seen of a car that came back hot to the causes behind it and the next test. The theory stands in the package of causes;
 * here the heat that each cause makes is computed ({@code HeatStates}), what gauge, lamp and steam would then have shown
 * ({@code Heat}), and all of it weighed ({@link headertank.calc.diagnosis.Diagnosis}).
 *
 * <p>The posterior of a cause is its prior times the likelihood of all that was seen, integrated over its severity and over what is not
 * known of the car: both are sampled, not fitted. So a cause that explains a reading at any severity loses to one that explains it at
 * most of them (Bayes factors; R. E. Kass and A. E. Raftery, 1995, from memory).
 */
package headertank.calc.diagnosis;
