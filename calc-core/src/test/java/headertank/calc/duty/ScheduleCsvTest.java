package headertank.calc.duty;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import headertank.calc.quantity.InputException;
import headertank.calc.quantity.InputProblem;
import headertank.calc.quantity.Physics;
import java.util.List;
import org.junit.jupiter.api.Test;

class ScheduleCsvTest {

    private static final String GOOD = String.join(
            "\n",
            "# id: hill-day",
            "# label: Hill, then a stop",
            "# start_coolant_C: 85",
            "# any other remark",
            "point,label,duration_s,road_speed_km_per_h,demand,engine_speed_share,slope,modes,fans_run_on,load_sigma_share",
            "hill,\"Hill, slow\",120,36,road,0.45,0.08,,,0.2",
            "run,,45,79.2,mix,0.8,,0.25:0.95:0.92 0.75:0.3:0.8,,",
            "hill,,60",
            "soak,,600,,engine_off,,,,yes,",
            "");

    @Test
    void readsPointsPhasesAndWhatTheDutyIs() {
        Duty d = ScheduleCsv.parse(GOOD);
        assertThat(d.id()).isEqualTo("hill-day");
        assertThat(d.label()).isEqualTo("Hill, then a stop");
        assertThat(d.judged()).isEqualTo(Duty.Judged.BOTH);
        assertThat(d.points()).extracting(OperatingPoint::id).containsExactly("hill", "run", "soak");
        Schedule s = d.schedule().orElseThrow();
        assertThat(s.startCoolantK()).isEqualTo(Physics.kelvin(85));
        assertThat(s.phases())
                .containsExactly(
                        new Schedule.Phase("hill", 120),
                        new Schedule.Phase("run", 45),
                        new Schedule.Phase("hill", 60),
                        new Schedule.Phase("soak", 600));
        OperatingPoint hill = d.point("hill");
        assertThat(hill.label()).isEqualTo("Hill, slow");
        assertThat(hill.roadSpeedMPerS()).isCloseTo(10, within(1e-12));
        assertThat(hill.demand()).isEqualTo(new Demand.Road(0.08, 0, 0.45));
        assertThat(hill.loadSigma()).isEqualTo(0.2);
        assertThat(d.point("soak").demand()).isEqualTo(new Demand.EngineOff(0, true));
        assertThat(d.point("run").loadSigma()).isEqualTo(0.1);
    }

    @Test
    void whatIsWrittenIsReadBack() {
        for (Duty duty :
                List.of(StandardDuties.STREET, StandardDuties.TRACK, StandardDuties.DRIFT, ScheduleCsv.parse(GOOD))) {
            String text = ScheduleCsv.write(duty);
            Duty back = ScheduleCsv.parse(text);
            assertThat(ScheduleCsv.write(back)).isEqualTo(text);
            assertThat(back.schedule()).isEqualTo(duty.schedule());
            assertThat(back.judged()).isEqualTo(duty.judged());
            assertThat(back.label()).isEqualTo(duty.label());
            assertThat(back.points()).hasSameSizeAs(duty.points());
            for (OperatingPoint p : duty.points()) {
                OperatingPoint q = back.point(p.id());
                assertThat(q.demand()).isEqualTo(p.demand());
                assertThat(q.label()).isEqualTo(p.label());
                assertThat(q.roadSpeedMPerS()).isCloseTo(p.roadSpeedMPerS(), within(1e-8));
                assertThat(q.yawRad()).isCloseTo(p.yawRad(), within(1e-9));
            }
        }
    }

    @Test
    void aLogNeedsNoNamesAndEqualLinesShareAPoint() {
        Duty d = ScheduleCsv.parse(String.join(
                "\r\n",
                "\uFEFF# id: log",
                "duration_s,road_speed_km_per_h,demand,engine_speed_share,modes",
                "5,150,mix,0.9,1:0.9:0.9",
                "4,80,mix,0.6,1:0.1:0.6",
                "5,150,mix,0.9,1:0.9:0.9"));
        assertThat(d.points()).hasSize(2);
        assertThat(d.schedule().orElseThrow().phases())
                .extracting(Schedule.Phase::pointId)
                .containsExactly("point-1", "point-2", "point-1");
    }

    @Test
    void everyFaultIsListedWithLineColumnValueAndWhatIsAllowed() {
        String bad = String.join(
                "\n",
                "# id: two words",
                "# judged: sometimes",
                "point,duration_s,road_speed_km_per_h,demand,engine_speed_share,slope,modes,fans_run_on",
                "a,-5,fast,road,0.4,0.9,,",
                "b,10,500,mix,0.8,,0.5:0.9:0.9,",
                "c,10,,hover,,,,",
                "d,10,,road,,,,maybe",
                "e,10,,mix,0.8,,0.5:x:0.9,",
                "f,10,,mix,0.8,,,",
                "g,10,,mix,0.8,,1:2:0.9,",
                "a,20,,,,,,");
        InputException e = catchThrowableOfType(InputException.class, () -> ScheduleCsv.parse(bad));
        assertThat(e.problems())
                .extracting(p -> "line " + p.line() + ", " + p.field() + "|" + p.value() + "|" + p.code())
                .containsExactlyInAnyOrder(
                        "line 4, road_speed_km_per_h|fast|NOT_UNDERSTOOD",
                        "line 4, slope|0.9|OUT_OF_RANGE",
                        "line 5, road_speed_km_per_h|500|OUT_OF_RANGE",
                        "line 5, modes|0.5:0.9:0.9|CONTRADICTION",
                        "line 6, demand|hover|NOT_UNDERSTOOD",
                        "line 7, engine_speed_share||MISSING",
                        "line 7, fans_run_on|maybe|NOT_UNDERSTOOD",
                        "line 8, modes|0.5:x:0.9|NOT_UNDERSTOOD",
                        "line 9, modes||MISSING",
                        "line 10, modes|1:2:0.9|OUT_OF_RANGE",
                        "line 4, duration_s|-5|OUT_OF_RANGE",
                        "line 1, # id|two words|NOT_UNDERSTOOD",
                        "line 2, # judged|sometimes|NOT_UNDERSTOOD");
        assertThat(e.problems())
                .filteredOn(p -> p.field().contains("slope"))
                .extracting(InputProblem::allowed)
                .containsExactly(DutyInputText.RANGE.with(CsvText.word("-0.5"), CsvText.word("0.5")));
    }

    @Test
    void quotesThatDoNotEndAreNamedWithTheirLineAndHideNoOtherFault() {
        String bad =
                "# id: x\n# said \"so\npoint,label,demand\na,\"open,idle\nb,\"x\"y,idle\nc, \"p, \"\"q\"\"\" ,hover";
        InputException e = catchThrowableOfType(InputException.class, () -> ScheduleCsv.parse(bad));
        assertThat(e.problems())
                .extracting(p -> "line " + p.line() + ", " + p.field() + "|" + p.value())
                .containsExactly("line 4, -|", "line 5, -|", "line 6, demand|hover");
        Duty good = ScheduleCsv.parse("# id: x\npoint,label,demand\nc, \"p, \"\"q\"\"\" ,idle");
        assertThat(good.point("c").label()).isEqualTo("p, \"q\"");
        assertThat(ScheduleCsv.parse(ScheduleCsv.write(good)).point("c").label())
                .isEqualTo("p, \"q\"");
    }

    @Test
    void aPointThatIsTwoThingsIsRefused() {
        String twice = "# id: x\npoint,duration_s,demand,road_speed_km_per_h\na,5,idle,10\na,5,idle,20";
        assertThatThrownBy(() -> ScheduleCsv.parse(twice))
                .isInstanceOf(InputException.class)
                .hasMessageContaining("line 4, point = a");
        String same = "# id: x\npoint,duration_s,demand,road_speed_km_per_h\na,5,idle,10\na,5,idle,10";
        assertThat(ScheduleCsv.parse(same).points()).hasSize(1);
    }

    @Test
    void textThatIsNoDutyIsRefused() {
        for (String text : List.of(
                "",
                "# id: x",
                "# id: x\npoint,demand",
                "# id: x\npoint,demand,colour\na,idle,red",
                "# id: x\npoint,demand\na,idle,3,4,5",
                "# id: x\npoint,duration_s\na,5",
                "# id: x\npoint,demand\na,engine_off",
                "# id: x\n# judged: BOTH\npoint,demand\na,idle",
                "# id: x\n# start_coolant_C: 900\npoint,demand,duration_s\na,idle,5",
                "# id: x\npoint,demand,duration_s\na,idle,80000\na,,80000",
                "# id: x\npoint,demand,demand\na,idle,idle")) {
            assertThatThrownBy(() -> ScheduleCsv.parse(text))
                    .as(text)
                    .isInstanceOf(InputException.class)
                    .hasMessageContaining("line ");
        }
    }
}
