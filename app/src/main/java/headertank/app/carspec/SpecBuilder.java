package headertank.app.carspec;

import headertank.app.field.FieldUnit;
import headertank.app.part.PartKind;
import headertank.app.part.PartRef;
import headertank.app.unit.UnitSystem;
import headertank.app.unit.Units;
import headertank.calc.carspec.Build;
import headertank.calc.carspec.BuildField;
import headertank.calc.carspec.CarClass;
import headertank.calc.quantity.Chosen;
import headertank.calc.quantity.Provenance;
import headertank.calc.quantity.Stated;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/** Makes a spec from texts as somebody would type them, bare numbers in metric units. */
public final class SpecBuilder {

    private final Build.Builder build;
    private final Map<BuildField, String> typed = new EnumMap<>(BuildField.class);
    private final Map<PartKind, PartRef> parts = new EnumMap<>(PartKind.class);
    private List<String> dutyIds;

    private SpecBuilder(Build.Builder build, List<String> dutyIds) {
        this.build = build;
        this.dutyIds = dutyIds;
    }

    public static SpecBuilder of(CarClass carClass, String... dutyIds) {
        return new SpecBuilder(Build.forCar(carClass), List.of(dutyIds));
    }

    /** Starts from a spec, to change some of it. */
    public static SpecBuilder from(Spec spec) {
        SpecBuilder builder = new SpecBuilder(spec.build().change(), spec.dutyIds());
        builder.typed.putAll(spec.typed());
        builder.parts.putAll(spec.parts());
        return builder;
    }

    public SpecBuilder duties(String... ids) {
        dutyIds = List.of(ids);
        return this;
    }

    /** @throws headertank.app.unit.UnitException when the text is no such quantity */
    public SpecBuilder set(BuildField field, String text, Provenance from) {
        build.set(field, new Stated(FieldUnit.parse(field, text, UnitSystem.METRIC), from, null));
        typed.put(field, Units.withUnit(text, FieldUnit.of(field), UnitSystem.METRIC));
        return this;
    }

    /** States a choice as seen on the car. */
    public SpecBuilder seen(BuildField field, String token) {
        build.set(field, new Chosen(token, Provenance.MEASURED));
        return this;
    }

    public SpecBuilder unknown(BuildField field) {
        build.unknown(field);
        typed.remove(field);
        return this;
    }

    /** @throws headertank.calc.quantity.InputException with every fault at once */
    public Spec spec() {
        return new Spec(build.build(), dutyIds, typed, parts);
    }
}
