package headertank.app.part;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.allOf;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.not;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import headertank.app.account.People;
import headertank.app.database.DatabaseTest;
import headertank.app.shop.Role;
import headertank.calc.carspec.BuildField;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.request.MockHttpServletRequestBuilder;
import org.springframework.test.web.servlet.request.RequestPostProcessor;

/** The pages of the catalogue. */
@DatabaseTest
class PartsIT {

    @Autowired
    MockMvc mvc;

    @Autowired
    People people;

    @Autowired
    Catalogue catalogue;

    @Autowired
    JdbcClient jdbc;

    long shop;
    RequestPostProcessor owner;

    @BeforeEach
    void aShop() {
        shop = people.aShop();
        owner = people.in(shop, Role.OWNER);
    }

    private MockHttpServletRequestBuilder send(String path, String... namesAndValues) {
        MockHttpServletRequestBuilder request = post(path).with(csrf()).with(owner);
        for (int i = 0; i < namesAndValues.length; i += 2) {
            request.param(namesAndValues[i], namesAndValues[i + 1]);
        }
        return request;
    }

    private long aFan(String name, String flow) throws Exception {
        String to = mvc.perform(send(
                        "/parts",
                        "kind",
                        "FAN",
                        "name",
                        name,
                        "price",
                        "149,90",
                        "currency",
                        "eur",
                        "stock",
                        "2 on the shelf",
                        "fan.freeFlowM3PerS",
                        flow,
                        "fan.freeFlowM3PerS.from",
                        "ADVERTISED"))
                .andExpect(status().is3xxRedirection())
                .andReturn()
                .getResponse()
                .getRedirectedUrl();
        return Long.parseLong(to.substring(to.lastIndexOf('/') + 1));
    }

    private PartLine saved(long id) {
        people.actAs(shop, Role.OWNER);
        return catalogue.part(id);
    }

    @Test
    void aPartReadsBackAsTypedWithWhereItComesFrom() throws Exception {
        long fan = aFan("Twin twelve", "2500 cfm");
        PartLine part = saved(fan);
        assertThat(part.content().price()).contains(new Price(14990, "EUR"));
        assertThat(part.content().values().typed()).isEqualTo(Map.of(BuildField.FAN_FLOW, "2500 cfm"));
        for (Role role : Role.values()) {
            mvc.perform(get("/parts/" + fan).with(people.in(shop, role)))
                    .andExpect(content()
                            .string(allOf(
                                    containsString("2500 cfm"),
                                    containsString("advertised"),
                                    containsString("149.90 EUR"),
                                    containsString("2 on the shelf"))));
        }
        mvc.perform(get("/parts/" + fan + "/edit").with(owner))
                .andExpect(content()
                        .string(allOf(containsString("value=\"2500 cfm\""), containsString("value=\"149.90\""))));
        mvc.perform(get("/parts/new?kind=RADIATOR").with(owner)).andExpect(status().isOk());
        mvc.perform(get("/parts/new").with(owner)).andExpect(content().string(containsString("kind=OIL_COOLER")));
    }

    @Test
    void everyFaultIsToldAtItsFieldAndNothingTypedIsLost() throws Exception {
        mvc.perform(send(
                        "/parts",
                        "kind",
                        "FAN",
                        "price",
                        "a lot",
                        "currency",
                        "EUR",
                        "fan.diameterM",
                        "3 m",
                        "fan.currentA",
                        "25",
                        "fan.startCurrentA",
                        "20",
                        "stock",
                        "none left"))
                .andExpect(status().isUnprocessableContent())
                .andExpect(content()
                        .string(allOf(
                                containsString("Please fill in the name"),
                                containsString("“a lot” is not a price"),
                                containsString("120.0 mm to 600.0 mm"),
                                containsString("at least the running current, here 25.0\u00a0A"),
                                containsString("value=\"3 m\""),
                                containsString("value=\"none left\""))));
        mvc.perform(send("/parts", "kind", "SOMETHING", "name", "x")).andExpect(status().isUnprocessableContent());
        people.actAs(shop, Role.OWNER);
        assertThat(catalogue.all()).isEmpty();
    }

    @Test
    void aNameBelongsToOnePartOfItsKind() throws Exception {
        long first = aFan("Twin twelve", "2500 cfm");
        long second = aFan("Other", "1900 cfm");
        mvc.perform(send("/parts", "kind", "FAN", "name", "TWIN twelve"))
                .andExpect(status().isUnprocessableContent())
                .andExpect(content().string(containsString("has this name already")));
        mvc.perform(send("/parts/" + second, "name", "Twin twelve", "version", "0"))
                .andExpect(status().isUnprocessableContent());
        mvc.perform(send("/parts/" + first, "name", "Twin Twelve", "version", "0"))
                .andExpect(status().is3xxRedirection());
        mvc.perform(send("/parts", "kind", "CAP", "name", "Twin twelve")).andExpect(status().is3xxRedirection());
    }

    @Test
    void whoSavesSecondIsToldAndKeepsWhatWasTyped() throws Exception {
        long fan = aFan("Twin twelve", "2500 cfm");
        mvc.perform(send("/parts/" + fan, "name", "Theirs", "version", "0", "fan.freeFlowM3PerS", "2400 cfm"))
                .andExpect(status().is3xxRedirection());
        mvc.perform(send(
                        "/parts/" + fan,
                        "name",
                        "Mine",
                        "version",
                        "0",
                        "fan.freeFlowM3PerS",
                        "2300 cfm",
                        "stock",
                        "one"))
                .andExpect(status().isConflict())
                .andExpect(content()
                        .string(allOf(
                                containsString("value=\"Mine\""),
                                containsString("value=\"2300 cfm\""),
                                containsString("value=\"one\""),
                                containsString("now saved: Theirs"),
                                containsString("now saved: 2400 cfm"),
                                containsString("name=\"version\" value=\"1\""))));
        assertThat(saved(fan).name()).isEqualTo("Theirs");
        mvc.perform(send("/parts/" + fan + "/retire", "version", "0", "retired", "true"))
                .andExpect(status().isConflict());
        assertThat(saved(fan).retired()).isFalse();
    }

    @Test
    void theListIsSearchedFilteredAndSorted() throws Exception {
        long fan = aFan("Twin twelve", "2500 cfm");
        aFan("Alone", "1500 cfm");
        mvc.perform(send("/parts", "kind", "CAP", "name", "Cap 1.3", "price", "9", "currency", "EUR"))
                .andExpect(status().is3xxRedirection());
        mvc.perform(send("/parts/" + fan + "/retire", "version", "0")).andExpect(status().is3xxRedirection());
        String list = mvc.perform(get("/parts?sort=price").with(people.in(shop, Role.TECHNICIAN)))
                .andExpect(
                        content().string(allOf(not(containsString("Twin twelve")), not(containsString("/parts/new")))))
                .andReturn()
                .getResponse()
                .getContentAsString();
        assertThat(list.indexOf("Cap 1.3")).isLessThan(list.indexOf("Alone"));
        mvc.perform(get("/parts?q=SHELF&retired=true").with(owner))
                .andExpect(content()
                        .string(allOf(
                                containsString("Twin twelve"),
                                containsString("Alone"),
                                not(containsString("Cap 1.3")))));
        mvc.perform(get("/parts?kind=CAP").with(owner))
                .andExpect(content().string(allOf(containsString("Cap 1.3"), not(containsString("Alone")))));
        mvc.perform(get("/parts?q=%25").with(owner)).andExpect(content().string(containsString("Nothing found")));
    }

    @Test
    void twoPartsOfAKindStandSideBySide() throws Exception {
        long one = aFan("One", "2500 cfm");
        long other = aFan("Other", "1900 cfm");
        mvc.perform(get("/parts/" + one + "/compare?with=" + other).with(owner))
                .andExpect(content()
                        .string(allOf(
                                containsString("2500 cfm"), containsString("1900 cfm"), containsString("differs"))));
        String cap = mvc.perform(send("/parts", "kind", "CAP", "name", "Cap"))
                .andReturn()
                .getResponse()
                .getRedirectedUrl();
        mvc.perform(get("/parts/" + one + "/compare?with=" + cap.substring(7)).with(owner))
                .andExpect(status().isNotFound());
    }

    @Test
    void anotherShopSeesNothing() throws Exception {
        long fan = aFan("Twin twelve", "2500 cfm");
        RequestPostProcessor ours = owner;
        owner = people.in(people.aShop(), Role.OWNER);
        for (String page : new String[] {"", "/edit", "/cars.csv", "/compare?with=" + fan}) {
            mvc.perform(get("/parts/" + fan + page).with(owner)).andExpect(status().isNotFound());
        }
        mvc.perform(send("/parts/" + fan, "name", "X", "version", "0")).andExpect(status().isNotFound());
        mvc.perform(send("/parts/" + fan + "/retire", "version", "0")).andExpect(status().isNotFound());
        mvc.perform(get("/parts/export.csv").with(owner))
                .andExpect(content().string(not(containsString("Twin twelve"))));
        aFan("Twin twelve", "100 cfm");
        owner = ours;
        assertThat(saved(fan).version()).isZero();
    }

    @Test
    void eachDeedLeavesAnAuditEntry() throws Exception {
        long fan = aFan("Twin twelve", "2500 cfm");
        mvc.perform(send("/parts/" + fan, "name", "Twin", "version", "0"));
        mvc.perform(send("/parts/" + fan + "/retire", "version", "1"));
        mvc.perform(send("/parts/" + fan + "/retire", "version", "2", "retired", "false"));
        assertThat(jdbc.sql("select action from audit_entry where shop_id = :s and subject_id = :p "
                                + "and subject_type = 'part' order by id")
                        .param("s", shop)
                        .param("p", fan)
                        .query(String.class)
                        .list())
                .containsExactly("part.added", "part.changed", "part.retired", "part.brought-back");
    }
}
