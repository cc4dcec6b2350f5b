package headertank.app.demo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import headertank.app.account.People;
import headertank.app.check.Checks;
import headertank.app.check.Specs;
import headertank.app.check.stored.CheckResult;
import headertank.app.check.stored.CheckResult.Condition;
import headertank.app.database.DatabaseTest;
import headertank.app.print.PageOne;
import headertank.app.shop.Role;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.web.servlet.MockMvc;

/** The conditions of a check bear the same numbers on its first screen, where it is signed, and on page 1 of its sheet. */
@DatabaseTest
class NumberedConditionsIT {

    private static final Pattern ON_A_PAGE =
            Pattern.compile("<span class=\"n\">(\\d+)</span>\\s*<(?:span class=\"about\"|strong)>([^<]+)<");

    @Autowired
    MockMvc mvc;

    @Autowired
    People people;

    @Autowired
    Specs specs;

    @Autowired
    Checks checks;

    long shop;

    @Test
    void firstScreenSigningPageAndSheetNameTheSameConditionsByTheSameNumbers() throws Exception {
        shop = people.aShop();
        int most = 0;
        for (Map.Entry<String, List<DemoSpecs.Step>> demo : DemoSpecs.ALL.entrySet()) {
            people.actAs(shop, Role.TECHNICIAN);
            var spec = demo.getValue().get(demo.getValue().size() - 1).spec();
            long car = specs.aCar();
            specs.save(car, spec.build(), spec.dutyIds().toArray(String[]::new));
            long check = checks.run(car, 1);
            CheckResult result = checks.byId(check).result();
            List<String> first = onPage("/checks/" + check);
            assertThat(first).as(demo.getKey()).hasSameSizeAs(result.conditions());
            assertThat(onPage("/checks/" + check + "/sign")).as(demo.getKey()).isEqualTo(first);
            String paper = firstPage("/checks/" + check + "/sheet.pdf?paper=a4");
            assertThat(first).as(demo.getKey()).allSatisfy(c -> assertThat(paper)
                    .contains(c));
            assertThat(keys("/checks/" + check + "/sign"))
                    .as("accepted in the same order")
                    .isEqualTo(result.conditions().stream().map(Condition::key).toList());
            most = Math.max(most, first.size());
        }
        assertThat(most).as("the demo has a car with several").isGreaterThan(2);
    }

    private List<String> onPage(String path) throws Exception {
        List<String> found = new ArrayList<>();
        Matcher one = ON_A_PAGE.matcher(page(path));
        while (one.find()) {
            found.add(one.group(1) + " " + one.group(2).replace("&#39;", "'").replace("&quot;", "\""));
        }
        return found;
    }

    private List<String> keys(String path) throws Exception {
        Matcher one = Pattern.compile("name=\"accepted\" value=\"([^\"]+)\"").matcher(page(path));
        List<String> found = new ArrayList<>();
        while (one.find()) {
            found.add(one.group(1));
        }
        return found;
    }

    private String page(String path) throws Exception {
        return mvc.perform(get(path).with(people.in(shop, Role.TECHNICIAN)))
                .andExpect(status().isOk())
                .andReturn()
                .getResponse()
                .getContentAsString();
    }

    private String firstPage(String path) throws Exception {
        byte[] pdf = mvc.perform(get(path).with(people.in(shop, Role.TECHNICIAN)))
                .andExpect(status().isOk())
                .andReturn()
                .getResponse()
                .getContentAsByteArray();
        return PageOne.of(pdf);
    }
}
