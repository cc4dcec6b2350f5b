package headertank.app.demo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import headertank.app.account.People;
import headertank.app.check.Checks;
import headertank.app.check.Specs;
import headertank.app.check.stored.DutyResult;
import headertank.app.check.stored.StoredVerdict;
import headertank.app.check.stored.WhatIf;
import headertank.app.check.stored.WhatIf.Kind;
import headertank.app.database.DatabaseTest;
import headertank.app.shop.Role;
import headertank.calc.carspec.Build;
import java.util.Map;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.web.servlet.MockMvc;

/** The invented drift car on a switch, on a ramp, with a sensor in the hose and with a dead fan. */
@DatabaseTest
class DemoDriftCarIT {

    @Autowired
    MockMvc mvc;

    @Autowired
    People people;

    private static final Map<StoredVerdict, String> VERDICTS = Map.of(
            StoredVerdict.GO, "GO",
            StoredVerdict.GO_WITH_CONDITIONS, "GO with conditions",
            StoredVerdict.NO_GO, "NO-GO");

    @Autowired
    Specs specs;

    @Autowired
    Checks checks;

    @Test
    void itsCheckShowsWhatATechnicianWouldRecognise() throws Exception {
        long shop = people.aShop();
        people.actAs(shop, Role.TECHNICIAN);
        Build build = DemoSpecs.ALL.get("DEMO 02").get(0).spec().build();
        long car = specs.aCar();
        specs.save(car, build, "drift");
        long id = checks.run(car, 1);

        DutyResult drift = checks.byId(id).result().duty("drift").orElseThrow();
        WhatIf relay = drift.whatIf(Kind.SWITCH).orElseThrow();
        WhatIf ramp = drift.whatIf(Kind.RAMP).orElseThrow();
        WhatIf hose = drift.whatIf(Kind.HOSE_SENSOR).orElseThrow();
        WhatIf dead = drift.whatIf(Kind.ONE_FAN_OUT).orElseThrow();
        assertThat(relay.stay().orElseThrow().gaugeSwingK())
                .isGreaterThan(ramp.stay().orElseThrow().gaugeSwingK() + 3);
        assertThat(relay.current().peakFanA()).isGreaterThan(ramp.current().peakFanA());
        assertThat(hose.run().peakCoolantK()).isGreaterThan(ramp.run().peakCoolantK());
        assertThat(dead.run().peakCoolantK()).isGreaterThan(ramp.run().peakCoolantK() + 3);

        String page = page(shop, "/checks/" + id + "/what-if");
        for (Kind kind : new Kind[] {Kind.SWITCH, Kind.RAMP, Kind.HOSE_SENSOR, Kind.ONE_FAN_OUT}) {
            assertThat(page).contains("<li data-kind=\"" + kind + "\">");
            assertThat(Pattern.compile("<polyline[^>]*data-curve=\"" + kind + "\"[^>]*points=\"[\\d.,]+ ")
                            .matcher(page)
                            .find())
                    .as("curve of " + kind)
                    .isTrue();
        }
        WhatIf asItIs =
                drift.whatIfs().stream().filter(WhatIf::asIs).findFirst().orElseThrow();
        assertThat(page.substring(page.indexOf("<li data-kind=\"" + asItIs.kind() + "\">")))
                .as("the card of the car as it is has the verdict of its duty")
                .containsPattern(
                        "(?s)^.*?<strong>" + Pattern.quote(VERDICTS.get(drift.verdict())) + "</strong>.*?</li>");
        assertThat(page).contains("Does slower coolant cool better?", "data-limit=\"coolant-limit\"");
        assertThat(page(shop, "/checks/" + id + "/run"))
                .contains("data-limit=\"coolant-limit\"", "data-curve=\"voltage\"", "data-curve=\"head\"");
        assertThat(page(shop, "/checks/" + id + "/reasons"))
                .contains("Margin at the run’s peak", "This duty is judged by the peak of its run");
    }

    private String page(long shop, String path) throws Exception {
        String page = mvc.perform(get(path).with(people.in(shop, Role.TECHNICIAN)))
                .andExpect(status().isOk())
                .andReturn()
                .getResponse()
                .getContentAsString();
        assertThat(page).doesNotContain("??check.");
        return page;
    }
}
