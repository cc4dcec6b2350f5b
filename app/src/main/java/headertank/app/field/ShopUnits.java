package headertank.app.field;

import headertank.app.shop.OncePerRequest;
import headertank.app.shop.Shops;
import headertank.app.unit.UnitSystem;
import java.util.function.Supplier;
import org.springframework.stereotype.Component;

/** The units of the shop that somebody has signed in to; looked up once in a request. */
@Component
class ShopUnits implements Supplier<UnitSystem> {

    private final OncePerRequest<UnitSystem> known;

    ShopUnits(Shops shops) {
        known = new OncePerRequest<>(
                ShopUnits.class,
                () -> shops.currentIfAny().map(s -> s.unitSystem()).orElse(UnitSystem.METRIC));
    }

    @Override
    public UnitSystem get() {
        return known.get();
    }
}
