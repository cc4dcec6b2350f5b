package headertank.app.settings;

import headertank.app.shop.Shop;
import headertank.app.unit.UnitSystem;
import headertank.calc.carspec.BuildField;
import headertank.calc.verdict.Threshold;

/** The settings as typed; a number may carry its unit, an empty one is the usual. */
record SettingsForm(
        String name,
        String unitSystem,
        String language,
        String paper,
        String timeZone,
        String recheckDays,
        String coolantLimit,
        String oilLimit,
        String goProbability,
        String conditionsProbability,
        String goMargin,
        String goBoiling,
        String leastBoiling,
        String oilOverCaution,
        String goDeficit,
        Integer version) {

    SettingsForm {
        name = text(name);
        unitSystem = text(unitSystem);
        language = text(language);
        paper = text(paper);
        timeZone = text(timeZone);
        recheckDays = text(recheckDays);
        coolantLimit = text(coolantLimit);
        oilLimit = text(oilLimit);
        goProbability = text(goProbability);
        conditionsProbability = text(conditionsProbability);
        goMargin = text(goMargin);
        goBoiling = text(goBoiling);
        leastBoiling = text(leastBoiling);
        oilOverCaution = text(oilOverCaution);
        goDeficit = text(goDeficit);
        version = version == null ? -1 : version;
    }

    private static String text(String typed) {
        return typed == null ? "" : typed.strip();
    }

    /** What the shop has now. */
    static SettingsForm of(Shop shop, int version) {
        UnitSystem u = shop.unitSystem();
        return new SettingsForm(
                shop.name(),
                u.name(),
                shop.language(),
                shop.paper().name(),
                shop.timeZone(),
                String.valueOf(shop.recheckDays()),
                figure(shop, BuildField.COOLANT_LIMIT),
                figure(shop, BuildField.OIL_LIMIT),
                moved(shop, Threshold.GO_PROBABILITY),
                moved(shop, Threshold.CONDITIONS_PROBABILITY),
                moved(shop, Threshold.GO_MARGIN_K),
                moved(shop, Threshold.GO_BOILING_K),
                moved(shop, Threshold.LEAST_BOILING_K),
                moved(shop, Threshold.OIL_OVER_CAUTION_K),
                moved(shop, Threshold.GO_DEFICIT_A),
                version);
    }

    /** The shop's own figure as its field shows it; empty when it has none. */
    static String figure(Shop shop, BuildField field) {
        Double si = shop.figures().get(field);
        return si == null ? "" : SettingField.of(field).show(si, shop.unitSystem());
    }

    /** A threshold as its field shows it. */
    static String moved(Shop shop, Threshold threshold) {
        return SettingField.of(threshold).show(shop.thresholds().value(threshold), shop.unitSystem());
    }

    /** What was typed for a field. */
    String typed(SettingField field) {
        return switch (field) {
            case COOLANT_LIMIT -> coolantLimit;
            case OIL_LIMIT -> oilLimit;
            case GO_PROBABILITY -> goProbability;
            case CONDITIONS_PROBABILITY -> conditionsProbability;
            case GO_MARGIN -> goMargin;
            case GO_BOILING -> goBoiling;
            case LEAST_BOILING -> leastBoiling;
            case OIL_OVER_CAUTION -> oilOverCaution;
            case GO_DEFICIT -> goDeficit;
        };
    }
}
