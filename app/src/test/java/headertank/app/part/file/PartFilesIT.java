package headertank.app.part.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.allOf;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.not;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.multipart;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.redirectedUrl;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import headertank.app.account.People;
import headertank.app.database.DatabaseTest;
import headertank.app.field.FieldText;
import headertank.app.field.FieldValues;
import headertank.app.field.TypedField;
import headertank.app.part.Catalogue;
import headertank.app.part.PartContent;
import headertank.app.part.PartKind;
import headertank.app.part.PartLine;
import headertank.app.part.Parts;
import headertank.app.part.Price;
import headertank.app.part.form.PartForm;
import headertank.app.part.form.PartReader;
import headertank.app.shop.Role;
import headertank.calc.carspec.BuildField;
import headertank.calc.quantity.Provenance;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.mock.web.MockMultipartFile;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.ResultActions;

/** Parts out to files and back in. */
@DatabaseTest
class PartFilesIT {

    @Autowired
    MockMvc mvc;

    @Autowired
    People people;

    @Autowired
    Parts parts;

    @Autowired
    PartReader reader;

    @Autowired
    FieldText text;

    @Autowired
    PartFiles files;

    @Autowired
    Catalogue catalogue;

    long shop;

    @BeforeEach
    void aShop() {
        shop = people.aShop();
        people.actAs(shop, Role.OWNER);
    }

    private static String unitText(BuildField field, Random random) {
        double low = field.allowed().min();
        double high = field.allowed().max();
        double si = low + random.nextDouble() * (high - low);
        return switch (field.kind()) {
            case LENGTH -> String.format(java.util.Locale.ROOT, "%.3f in", si / 0.0254);
            case COUNT -> Long.toString(Math.round(Math.floor(low + 0.999 * random.nextDouble() * (high - low))));
            case AIR_FLOW, LIQUID_FLOW -> String.format(java.util.Locale.ROOT, "%.7f m³/s", si);
            case PRESSURE_GAUGE, PRESSURE_DIFFERENCE -> String.format(java.util.Locale.ROOT, "%.1f Pa", si);
            case TEMPERATURE -> String.format(java.util.Locale.ROOT, "+%.1f °C", si - 273.15);
            case TEMPERATURE_DIFFERENCE -> String.format(java.util.Locale.ROOT, "%.2f K", si);
            case SHARE -> String.format(java.util.Locale.ROOT, "%.1f %%", 100 * si);
            case CURRENT -> String.format(java.util.Locale.ROOT, "%.2f", si);
            default -> String.format(java.util.Locale.ROOT, "%.3f", si);
        };
    }

    private PartForm randomForm(int n, Random random) {
        PartKind kind = PartKind.values()[random.nextInt(PartKind.values().length)];
        Map<BuildField, TypedField> fields = new EnumMap<>(BuildField.class);
        for (BuildField field : kind.fields()) {
            if (random.nextBoolean()) {
                List<String> options = text.options(field);
                String text = field.isChoice() ? options.get(random.nextInt(options.size())) : unitText(field, random);
                fields.put(field, new TypedField(text, Provenance.values()[random.nextInt(4)]));
            }
        }
        String[] stocks = {"", "=HYPERLINK(\"x\")", "-2, reordered", "\"quoted\"; and more", "@shelf", "'=odd"};
        boolean priced = random.nextBoolean();
        return new PartForm(
                kind.name(),
                "Part " + n + (random.nextBoolean() ? "" : ", \"long\""),
                random.nextBoolean() ? "" : "+REF" + n,
                priced ? random.nextInt(1000) + "." + (10 + random.nextInt(90)) : "",
                priced ? "EUR" : "",
                stocks[random.nextInt(stocks.length)],
                fields,
                null);
    }

    @Test
    void whatIsExportedChangesNothingWhenItIsImportedAndFillsAnotherShopAlike() {
        long seed = 4711;
        Random random = new Random(seed);
        int made = 0;
        for (int n = 0; made < 40; n++) {
            Optional<PartContent> content =
                    reader.read(randomForm(n, random), FieldValues.none()).content();
            if (content.isPresent()) {
                long id = parts.add(content.get());
                made++;
                if (made % 7 == 0) {
                    parts.retire(id, true, 0);
                }
            }
            assertThat(n).as("seed %d makes parts that are accepted", seed).isLessThan(400);
        }
        String exported = files.export();
        ImportPlan again = files.plan(exported);
        assertThat(again.faults()).as("seed %d", seed).isEmpty();
        assertThat(again.untouched()).as("seed %d", seed).isEqualTo(40);
        assertThat(again.ready()).isFalse();

        List<PartContent> here = catalogue.all().stream().map(PartLine::content).toList();
        people.actAs(people.aShop(), Role.OWNER);
        ImportPlan fresh = files.plan(exported);
        assertThat(fresh.added()).isEqualTo(40);
        files.take(exported, fresh.fingerprint(), null);
        assertThat(catalogue.all().stream().map(PartLine::content).toList()).isEqualTo(here);
        assertThat(files.export()).as("seed %d", seed).isEqualTo(exported);
    }

    @Test
    void noCellOfAnExportBeginsAFormula() {
        parts.add(reader.read(new PartForm("CAP", "=1+1", "@ref", "", "", "-cmd", Map.of(), null), FieldValues.none())
                .content()
                .orElseThrow());
        assertThat(files.export()).contains("CAP,'=1+1,'@ref,,,'-cmd,no");
    }

    private ResultActions upload(byte[] content) throws Exception {
        return mvc.perform(multipart("/parts/import")
                .file(new MockMultipartFile("file", "parts.csv", "text/csv", content))
                .with(csrf())
                .with(people.in(shop, Role.OWNER)));
    }

    private ResultActions upload(String content) throws Exception {
        return upload(content.getBytes(StandardCharsets.UTF_8));
    }

    private List<String> names() {
        people.actAs(shop, Role.OWNER);
        return new ArrayList<>(catalogue.all().stream().map(PartLine::name).toList());
    }

    @Test
    void everyFaultNamesItsLineColumnValueAndWhatIsAllowedAndNothingIsImported() throws Exception {
        upload("kind,name,price,radiator.coreWidthM,radiator.material,fan.drive,radiator.coreWidthM.from\n"
                        + "RADIATOR,Good one,10,650 mm,ALUMINIUM,,\n"
                        + "RADIATOR,Wide one,a lot,6500 mm,WOOD,ELECTRIC,HEARSAY\n"
                        + "RADIATOR,good ONE,,,,,\n"
                        + "ENGINE,V8,,,,,\n"
                        + "RADIATOR,Long,,,,,,,\n")
                .andExpect(status().isUnprocessableContent())
                .andExpect(content()
                        .string(allOf(
                                containsString("150.0 mm to 1200.0 mm"),
                                containsString("6500 mm"),
                                containsString("“a lot” is not a price"),
                                containsString("Allowed here: ALUMINIUM, COPPER_BRASS"),
                                containsString("Allowed here: MEASURED, DATASHEET, ADVERTISED, GUESSED"),
                                containsString("A part of kind RADIATOR has no such value"),
                                containsString("This part is in the file twice"),
                                containsString("“ENGINE” is no kind of part"),
                                containsString("more than the 7 cells"),
                                not(containsString("fingerprint")))));
        assertThat(names()).isEmpty();
        upload("kind,name,colour\nCAP,x,red\n")
                .andExpect(status().isUnprocessableContent())
                .andExpect(content().string(allOf(containsString("colour"), containsString("not known"))));
        upload("name\nx\n").andExpect(content().string(containsString("This column is missing")));
        upload("kind,name\nCAP,\"x\n").andExpect(content().string(containsString("A quoted cell")));
        upload(new byte[] {'k', (byte) 0xE9, 'n'}).andExpect(content().string(containsString("not in UTF-8")));
        upload("").andExpect(status().isUnprocessableContent());
        upload("x".repeat(ImportReader.MOST_BYTES + 1)).andExpect(content().string(containsString("512 KiB")));
        upload("kind,name\n" + "CAP,x\n".repeat(ImportReader.MOST_LINES + 1))
                .andExpect(content().string(containsString("More than 2,000 lines")));
    }

    @Test
    void aFileIsLookedAtThenTakenOverWhole() throws Exception {
        parts.add(reader.read(
                        new PartForm(
                                "CAP",
                                "Cap",
                                "A1",
                                "5",
                                "EUR",
                                "one",
                                Map.of(BuildField.CAP_PRESSURE, new TypedField("1.3 bar", Provenance.MEASURED)),
                                null),
                        FieldValues.none())
                .content()
                .orElseThrow());
        String file = "\ufeffkind;name;stock;coolant.capGaugePa\r\nCAP;Cap;;19 psi\r\nFAN;New fan;2;\r\n";
        upload(file)
                .andExpect(status().isOk())
                .andExpect(content()
                        .string(allOf(
                                containsString("One part would be added, 1 changed, 0 left as they are."),
                                containsString("stock, coolant.capGaugePa"))));
        assertThat(names()).containsExactly("Cap");
        String print = files.plan(file).fingerprint();
        mvc.perform(post("/parts/import/confirm")
                        .with(csrf())
                        .with(people.in(shop, Role.OWNER))
                        .param("text", file)
                        .param("fingerprint", print))
                .andExpect(redirectedUrl("/parts"));
        assertThat(names()).containsExactly("Cap", "New fan");
        PartContent cap = catalogue.named(PartKind.CAP, "cap").orElseThrow().content();
        assertThat(cap.reference()).as("a column that is not in the file").isEqualTo("A1");
        assertThat(cap.price()).contains(new Price(500, "EUR"));
        assertThat(cap.stock()).as("an empty cell").isEmpty();
        assertThat(cap.values().typed()).containsEntry(BuildField.CAP_PRESSURE, "19 psi");
        mvc.perform(post("/parts/import/confirm")
                        .with(csrf())
                        .with(people.in(shop, Role.OWNER))
                        .param("text", file.replace("19 psi", "20 psi"))
                        .param("fingerprint", print))
                .andExpect(status().isConflict())
                .andExpect(content().string(containsString("has changed since you looked")));
    }

    @Test
    void theOwnerAloneImportsAndEverybodyExports() throws Exception {
        for (Role role : List.of(Role.FRONT_DESK, Role.TECHNICIAN)) {
            mvc.perform(get("/parts/import").with(people.in(shop, role))).andExpect(status().isForbidden());
            mvc.perform(get("/parts/export.csv").with(people.in(shop, role)))
                    .andExpect(status().isOk())
                    .andExpect(content().string("kind,name,reference,price,currency,stock,retired\r\n"));
        }
    }
}
