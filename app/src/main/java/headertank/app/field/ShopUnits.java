package headertank.app.field;

import headertank.app.shop.Shops;
import headertank.app.unit.UnitSystem;
import java.util.function.Supplier;
import org.springframework.stereotype.Component;
import org.springframework.web.context.request.RequestAttributes;
import org.springframework.web.context.request.RequestContextHolder;

/** The units of the shop that somebody has signed in to; looked up once in a request. */
@Component
class ShopUnits implements Supplier<UnitSystem> {

    private static final String KNOWN = ShopUnits.class.getName();

    private final Shops shops;

    ShopUnits(Shops shops) {
        this.shops = shops;
    }

    @Override
    public UnitSystem get() {
        RequestAttributes request = RequestContextHolder.getRequestAttributes();
        if (request == null) {
            return lookUp();
        }
        Object known = request.getAttribute(KNOWN, RequestAttributes.SCOPE_REQUEST);
        if (known == null) {
            known = lookUp();
            request.setAttribute(KNOWN, known, RequestAttributes.SCOPE_REQUEST);
        }
        return (UnitSystem) known;
    }

    private UnitSystem lookUp() {
        return shops.currentIfAny().map(s -> s.unitSystem()).orElse(UnitSystem.METRIC);
    }
}
