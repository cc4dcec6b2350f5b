package headertank.calc.carspec;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import headertank.calc.Builds;
import headertank.calc.Rater;
import headertank.calc.air.FanClaim;
import headertank.calc.air.FanFit;
import headertank.calc.air.FanSpec;
import headertank.calc.choice.FanDrive;
import headertank.calc.engine.EngineClass;
import headertank.calc.fluid.Fuel;
import headertank.calc.quantity.Chosen;
import headertank.calc.quantity.Entry;
import headertank.calc.quantity.InputException;
import headertank.calc.quantity.InputProblem;
import headertank.calc.quantity.Provenance;
import headertank.calc.quantity.Stated;
import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class BuildTest {

    @Test
    void everyFaultIsReportedAtOnceWithFieldValueAndRange() {
        InputException e = catchThrowableOfType(InputException.class, () -> Build.forCar(CarClass.TRACK)
                .set(BuildField.CORE_WIDTH, Stated.measured(6.5))
                .set(BuildField.FAN_COUNT, Stated.measured(1.5))
                .seen(BuildField.CORE_TANKS, "BEHIND")
                .set(BuildField.THERMOSTAT, Stated.measured(1))
                .build());
        assertThat(e.problems())
                .extracting(InputProblem::field)
                .containsExactlyInAnyOrder("radiator.coreWidthM", "fan.count", "radiator.tanks", "thermostat.state");
        assertThat(e.getMessage())
                .contains("radiator.coreWidthM = 6.5")
                .contains("0.15")
                .contains("1.2");
    }

    @Test
    void contradictionsAreRefusedByTheBuilderOnly() {
        Build.Builder twisted = Build.forCar(CarClass.TRACK)
                .set(BuildField.FAN_CURRENT, Stated.measured(25))
                .set(BuildField.FAN_START_CURRENT, Stated.measured(20));
        assertThatThrownBy(twisted::build).isInstanceOf(InputException.class).hasMessageContaining("fan.startCurrentA");
        Build weak = Build.forCar(CarClass.TRACK)
                .set(BuildField.FAN_START_CURRENT, Stated.measured(20))
                .build();
        Build strong = Build.forCar(CarClass.TRACK)
                .set(BuildField.FAN_CURRENT, Stated.measured(25))
                .build();
        assertThat(weak.withFieldOf(strong, BuildField.FAN_CURRENT).entries()).hasSize(2);
    }

    @Test
    void aFanOfKnownCurrentGetsTheFlowAndPressureThatFansUsuallyMakeOfIt() {
        Resolved r = Rater.standard()
                .resolve(Build.forCar(CarClass.DRIFT)
                        .set(BuildField.FAN_CURRENT, Stated.measured(18))
                        .set(BuildField.FAN_DIAMETER, Stated.measured(0.30))
                        .build());
        FanSpec fan = FanSpec.of(
                1,
                r.value(BuildField.FAN_FLOW),
                r.value(BuildField.FAN_SHUT_OFF),
                0.30,
                FanSpec.USUAL_HUB_SHARE * 0.30);
        FanClaim claim = FanClaim.check(fan, 13, 18, false);
        assertThat(claim.kineticW() / claim.electricW()).isCloseTo(FanFit.USUAL_KINETIC_SHARE, within(1e-12));
        assertThat(fan.shutOffPa()).isCloseTo(FanFit.shutOffPa(fan.freeFlowM3PerS(), 13 * 18, 0.5), within(1e-9));
    }

    @Test
    void dieselInAPetrolEngineIsAContradiction() {
        assertThatThrownBy(() -> Build.forCar(CarClass.MODERN_STREET)
                        .seen(BuildField.ENGINE_CLASS, EngineClass.PETROL_TURBO)
                        .seen(BuildField.FUEL, Fuel.DIESEL)
                        .build())
                .isInstanceOf(InputException.class)
                .hasMessageContaining("fuel.burnt");
    }

    @Test
    void aBuildCannotBeChangedFromOutside() {
        Map<BuildField, Entry> mine = new HashMap<>();
        mine.put(BuildField.FAN_COUNT, Stated.measured(1));
        Build build = new Build(CarClass.DRIFT, mine);
        mine.put(BuildField.FAN_COUNT, Stated.measured(2));
        assertThat(((Stated) build.entries().get(BuildField.FAN_COUNT)).si()).isEqualTo(1);
        assertThatThrownBy(() -> build.entries().clear()).isInstanceOf(UnsupportedOperationException.class);
    }

    @Test
    void keysAreUniqueAndNameTheirUnit() {
        assertThat(Arrays.stream(BuildField.values()).map(BuildField::key)).doesNotHaveDuplicates();
        for (BuildField f : BuildField.values()) {
            assertThat(BuildField.ofKey(f.key())).contains(f);
            if (f.isChoice()) {
                continue;
            }
            String suffix =
                    switch (f.kind().siUnit()) {
                        case "m" -> "M";
                        case "m2" -> "M2";
                        case "m3" -> "M3";
                        case "m3/s" -> "M3PerS";
                        case "kg" -> "Kg";
                        case "W/K" -> "WPerK";
                        case "m2K/W" -> "M2KPerW";
                        case "1/s" -> "PerS";
                        case "rad" -> "Rad";
                        case "s" -> "S";
                        case "-" -> "";
                        case "K", "Pa", "W", "A" -> f.kind().siUnit();
                        default -> "a unit without a suffix";
                    };
            assertThat(f.key()).endsWith(suffix);
        }
    }

    @ParameterizedTest
    @EnumSource(CarClass.class)
    void aCarOfWhichNothingIsKnownIsRatedOnAssumptionsAlone(CarClass carClass) {
        Resolved r = Rater.standard().resolve(Build.of(carClass));
        assertThat(r.assumptions()).hasSizeGreaterThan(60).allSatisfy(a -> {
            assertThat(a.why()).isNotNull();
            if (!a.field().isChoice()) {
                assertThat(a.field().allowed().contains(a.value())).isTrue();
            } else if (!a.field().options().isEmpty()) {
                assertThat(a.field().options()).contains(a.token());
            }
        });
    }

    @Test
    void statedFieldsAreNoAssumptions() {
        Resolved r = Rater.standard().resolve(Builds.road());
        assertThat(r.assumptions())
                .extracting(Assumption::field)
                .doesNotContainAnyElementsOf(Builds.road().entries().keySet());
        assertThat(r.from(BuildField.CORE_WIDTH)).contains(Provenance.MEASURED);
        assertThat(r.from(BuildField.ALTERNATOR)).isEmpty();
    }

    @Test
    void advertisedFanFlowIsNotTakenAtItsWord() {
        Resolved advertised = fanFlow(Stated.advertised(1.0));
        Resolved measured = fanFlow(Stated.measured(1.0));
        assertThat(advertised.value(BuildField.FAN_FLOW)).isEqualTo(0.85);
        assertThat(measured.value(BuildField.FAN_FLOW)).isEqualTo(1.0);
        assertThat(advertised.spread(BuildField.FAN_FLOW).sigma())
                .isGreaterThan(measured.spread(BuildField.FAN_FLOW).sigma());
    }

    private static Resolved fanFlow(Stated flow) {
        return Rater.standard()
                .resolve(Build.forCar(CarClass.DRIFT)
                        .set(BuildField.FAN_FLOW, flow)
                        .build());
    }

    @Test
    void unknownCoreClassIsRefusedWithTheInstalledOnes() {
        Build build = Build.forCar(CarClass.TRACK)
                .set(BuildField.CORE_CLASS, new Chosen("magic", Provenance.GUESSED))
                .build();
        assertThatThrownBy(() -> Rater.standard().resolve(build))
                .isInstanceOf(InputException.class)
                .hasMessageContaining("radiator.coreClass = magic")
                .hasMessageContaining("thin-original");
    }

    @Test
    void differenceSeesValueProvenanceAndPresence() {
        Build before = Builds.road();
        Build after = before.change()
                .set(BuildField.FAN_FLOW, Stated.measured(0.9))
                .set(BuildField.CORE_WIDTH, Stated.datasheet(0.65))
                .unknown(BuildField.FAN_COVER)
                .set(BuildField.ALTERNATOR, Stated.measured(90))
                .build();
        assertThat(BuildDifference.between(before, before)).isEmpty();
        assertThat(BuildDifference.between(before, after))
                .extracting(FieldChange::field)
                .containsExactly(
                        BuildField.CORE_WIDTH, BuildField.FAN_FLOW, BuildField.FAN_COVER, BuildField.ALTERNATOR);
        assertThat(BuildDifference.between(before, after))
                .filteredOn(FieldChange::onlyProvenance)
                .extracting(FieldChange::field)
                .containsExactly(BuildField.CORE_WIDTH);
    }

    @Test
    void anOptionOfAnotherFieldIsRefusedAndNeverTakenForThisOne() {
        Build.Builder build = Build.forCar(CarClass.TRACK);
        assertThatThrownBy(() -> build.seen(BuildField.PUMP_DRIVE, FanDrive.ELECTRIC))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("pump.drive");
        for (BuildField f : BuildField.values()) {
            assertThat(f.isChoice() && f != BuildField.CORE_CLASS)
                    .as(f.key())
                    .isEqualTo(!f.options().isEmpty());
        }
    }
}
