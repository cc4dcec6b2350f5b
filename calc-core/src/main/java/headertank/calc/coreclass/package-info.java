/**
 * Classes of core: the typical geometry of a kind of radiator, for a shop that knows no more than what it looks like, and how far
 * the cores of a class lie apart. A class states eleven figures ({@link headertank.calc.coreclass.CoreFigure}), each with its
 * spread; what a caliper has measured replaces them one by one. The spread of heat and pressure drop that the rest leaves open is
 * found by moving each figure by one standard deviation and adding the changes in squares
 * ({@link headertank.calc.coreclass.CoreClass#spread}; derived, first order). The figures of
 * {@link headertank.calc.coreclass.StandardCoreClasses} are common practice, no source. Others are supplied by a
 * {@link headertank.calc.coreclass.CoreClassSource}.
 */
package headertank.calc.coreclass;
