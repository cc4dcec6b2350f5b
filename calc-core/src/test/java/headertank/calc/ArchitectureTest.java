package headertank.calc;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.fields;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/** Who may use whom in calc-core, and what none of it may use. */
class ArchitectureTest {

    private static final JavaClasses CORE = new ClassFileImporter()
            .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
            .importPackages("headertank.calc");

    private static final String[] LAYER_0 = {"quantity"};
    private static final String[] LAYER_1 = {"quantity", "choice", "fluid"};
    private static final String[] COMPONENTS = {
        "engine", "radiator", "air", "coolant", "oil", "electric", "control", "sensor", "hood"
    };
    private static final String[] LAYER_3 = plus(plus(LAYER_1, COMPONENTS), "coreclass", "carspec", "duty", "result");
    private static final String[] LAYER_4 = plus(LAYER_3, "rating");

    /** Each package but the root, with those of calc-core that it may use; a new one gets its line here. */
    private static Map<String, String[]> rules() {
        Map<String, String[]> rules = new TreeMap<>();
        rules.put("quantity", new String[0]);
        rules.put("choice", new String[0]);
        rules.put("fluid", LAYER_0);
        for (String component : COMPONENTS) {
            rules.put(component, LAYER_1);
        }
        rules.put("coreclass", plus(LAYER_1, COMPONENTS));
        rules.put("carspec", plus(LAYER_1, plus(COMPONENTS, "coreclass")));
        rules.put("duty", plus(LAYER_1, COMPONENTS));
        rules.put("result", plus(LAYER_1, plus(COMPONENTS, "coreclass", "carspec", "duty")));
        rules.put("evidence", plus(LAYER_1, plus(COMPONENTS, "carspec", "duty", "result")));
        rules.put("rating", LAYER_3);
        rules.put("uncertainty", LAYER_4);
        rules.put("transients", plus(LAYER_4, "evidence"));
        rules.put("verdict", plus(LAYER_4, "uncertainty", "transients"));
        rules.put("attribution", plus(LAYER_4, "uncertainty"));
        rules.put("judged", plus(LAYER_4, "uncertainty", "transients", "verdict"));
        rules.put("advice", plus(LAYER_4, "uncertainty", "transients", "verdict", "attribution", "risk"));
        rules.put("risk", plus(LAYER_4, "transients", "verdict", "judged"));
        rules.put("whatif", plus(LAYER_4, "uncertainty", "transients", "verdict", "judged"));
        rules.put("workshop", plus(LAYER_4, "uncertainty", "transients"));
        rules.put("cause", plus(LAYER_1, plus(COMPONENTS, "coreclass", "carspec", "duty")));
        rules.put("diagnosis", plus(LAYER_4, "uncertainty", "transients", "verdict", "judged", "evidence", "cause"));
        rules.put("learning", plus(LAYER_4, "uncertainty", "transients", "workshop", "evidence"));
        return rules;
    }

    @Test
    void eachPackageUsesOnlyTheLayersBelow() {
        rules().forEach(ArchitectureTest::mayUse);
    }

    @Test
    void everyPackageHasItsPlace() {
        Set<String> packages = new TreeSet<>();
        for (JavaClass type : CORE) {
            String[] name = type.getPackageName().split("\\.");
            if (name.length > 2) {
                packages.add(name[2]);
            }
        }
        assertThat(rules().keySet()).isEqualTo(packages);
    }

    @Test
    void coreIsPure() {
        noClasses()
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage(
                        "org.springframework..",
                        "jakarta..",
                        "javax..",
                        "java.sql..",
                        "java.io..",
                        "java.nio..",
                        "java.net..",
                        "java.time..",
                        "java.util.concurrent..",
                        "java.util.logging..",
                        "org.slf4j..")
                .check(CORE.that(com.tngtech.archunit.base.DescribedPredicate.describe(
                        "not an exception", c -> !c.isAssignableTo(Throwable.class))));
        noClasses()
                .should()
                .callMethod(System.class, "currentTimeMillis")
                .orShould()
                .callMethod(System.class, "nanoTime")
                .orShould()
                .callMethod(Math.class, "random")
                .orShould()
                .callMethod(java.util.Locale.class, "getDefault")
                .check(CORE);
    }

    @Test
    void coreKeepsNoState() {
        fields().that().areStatic().should().beFinal().check(CORE);
        classes()
                .that()
                .areTopLevelClasses()
                .and()
                .areNotInterfaces()
                .and()
                .areNotRecords()
                .and()
                .areNotEnums()
                .and()
                .arePublic()
                .and()
                .areNotAssignableTo(Throwable.class)
                .should()
                .haveModifier(com.tngtech.archunit.core.domain.JavaModifier.FINAL)
                .check(CORE);
    }

    private static void mayUse(String name, String[] others) {
        List<String> allowed = new ArrayList<>(List.of("java..", "org.hipparchus..", "headertank.calc." + name + ".."));
        if (name.equals("duty")) {
            allowed.add("de.siegmar.fastcsv.reader..");
        }
        Arrays.stream(others).forEach(o -> allowed.add("headertank.calc." + o + ".."));
        classes()
                .that()
                .resideInAPackage("headertank.calc." + name + "..")
                .should()
                .onlyDependOnClassesThat()
                .resideInAnyPackage(allowed.toArray(String[]::new))
                .check(CORE);
    }

    private static String[] plus(String[] first, String... more) {
        List<String> all = new ArrayList<>(Arrays.asList(first));
        all.addAll(Arrays.asList(more));
        return all.toArray(String[]::new);
    }
}
