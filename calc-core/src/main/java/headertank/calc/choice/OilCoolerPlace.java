package headertank.calc.choice;

/** Where a cooler between oil and air gets its air. */
public enum OilCoolerPlace {
    /** In front of the core: the core's own air, by fans and by road speed. */
    BEFORE_CORE,
    /** In a duct, a wing or the nose beside the core: by road speed alone. */
    ELSEWHERE
}
