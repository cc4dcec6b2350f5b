package headertank.app.demo;

import headertank.app.part.FittedParts;
import headertank.app.part.PartContent;
import headertank.app.part.PartKind;
import headertank.app.part.PartRef;
import headertank.app.part.Parts;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.springframework.boot.autoconfigure.condition.ConditionalOnProperty;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;

/** Fills the invented shop's catalogue; one that holds anything already is left alone. */
@Component
@ConditionalOnProperty("headertank.demo")
class DemoCatalogue {

    private final DemoSight there;
    private final Parts parts;
    private final FittedParts fitted;

    DemoCatalogue(DemoSight there, Parts parts, FittedParts fitted) {
        this.there = there;
        this.parts = parts;
        this.fitted = fitted;
    }

    @Transactional
    public void ensure() {
        there.shopsWithoutParts().forEach(shop -> DemoParts.ALL.forEach(part -> parts.addFor(shop, part)));
    }

    /** The parts with these names, as far as the shop has them. */
    Map<PartKind, PartRef> refs(long shop, List<String> names) {
        Map<PartKind, PartRef> refs = new EnumMap<>(PartKind.class);
        for (PartContent part : DemoParts.ALL) {
            if (names.contains(part.name())) {
                fitted.named(shop, part.kind(), part.name()).ifPresent(ref -> refs.put(part.kind(), ref));
            }
        }
        return refs;
    }
}
