package headertank.app.shop;

import headertank.app.unit.UnitSystem;

/**
 * A shop.
 *
 * @param invented true for the demo shop
 */
public record Shop(long id, String name, UnitSystem unitSystem, boolean invented) {}
