package headertank.calc.choice;

/** Where the tanks sit, which says which way the tubes run. */
public enum TankPlacement {
    /** Tanks left and right: coolant flows across, tubes are as long as the core is wide. */
    SIDES,
    /** Tanks at the top and bottom: coolant flows down, tubes are as long as the core is high. */
    TOP_AND_BOTTOM
}
