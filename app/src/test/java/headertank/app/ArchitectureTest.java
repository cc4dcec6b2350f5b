package headertank.app;

import static com.tngtech.archunit.base.DescribedPredicate.describe;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.fields;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noFields;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.AccessTarget.CodeUnitAccessTarget;
import com.tngtech.archunit.core.domain.JavaAccess;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.library.Architectures;
import jakarta.persistence.Entity;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.data.repository.Repository;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;

/** How the app hangs together. */
@AnalyzeClasses(packages = "headertank.app", importOptions = ImportOption.DoNotIncludeTests.class)
class ArchitectureTest {

    @ArchTest
    static final ArchRule FEATURES_DEPEND_ONE_WAY =
            slices().matching("headertank.app.(*)..").should().beFreeOfCycles();

    /** From the bottom up. Each layer may be used by those after it, some by the outermost alone; a new package gets its place here. */
    private static final List<Layer> LAYERS = List.of(
            Layer.of("unit", "problem", "database", "stored", "csv"),
            Layer.of("chart"),
            Layer.of("shop"),
            Layer.of("audit", "form", "gate"),
            Layer.of("account", "language", "settings", "backup"),
            Layer.of("field"),
            Layer.of("glossary", "car", "part", "log", "duty"),
            Layer.of("evidence"),
            Layer.of("carspec"),
            Layer.of("check"),
            Layer.of("handover"),
            Layer.of("incident", "job", "carlog", "known").forOutermost(),
            Layer.of("drawing").forOutermost(),
            Layer.of("print", "demo"));

    @ArchTest
    static final ArchRule EACH_LAYER_USES_THOSE_BELOW = layered();

    @ArchTest
    static void everyPackageHasItsPlace(JavaClasses app) {
        Set<String> packages = new TreeSet<>();
        for (JavaClass type : app) {
            String[] name = type.getPackageName().split("\\.");
            if (name.length > 2) {
                packages.add(name[2]);
            }
        }
        assertThat(LAYERS.stream().flatMap(l -> l.packages().stream()))
                .as("the packages that LAYERS names")
                .containsExactlyInAnyOrderElementsOf(packages);
    }

    /** The root starts the app; who uses it starts it twice. */
    @ArchTest
    static final ArchRule NOBODY_USES_THE_ROOT = noClasses()
            .that()
            .resideOutsideOfPackage("headertank.app")
            .should()
            .dependOnClassesThat()
            .resideInAPackage("headertank.app");

    @ArchTest
    static final ArchRule REPOSITORIES_STAY_IN_THEIR_FEATURE =
            classes().that().areAssignableTo(Repository.class).should().bePackagePrivate();

    @ArchTest
    static final ArchRule ENTITIES_STAY_IN_THEIR_FEATURE =
            classes().that().areAnnotatedWith(Entity.class).should().bePackagePrivate();

    /** What is stored is read for ever, whatever becomes of the physics. */
    @ArchTest
    static final ArchRule STORED_RECORDS_ARE_OUR_OWN = noClasses()
            .that()
            .resideInAPackage("headertank.app.check.stored..")
            .should()
            .dependOnClassesThat()
            .resideInAPackage("headertank.calc..");

    /** Who adds rows that are kept does so in a store; whoever else asks the database can only read. */
    @ArchTest
    static final ArchRule SQL_IN_STORES_OR_TO_READ = noClasses()
            .that()
            .haveSimpleNameNotEndingWith("Store")
            .and(describe("may write", ArchitectureTest::mayWrite))
            .and()
            .doNotHaveFullyQualifiedName("headertank.app.demo.DemoPast")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("org.springframework.jdbc.core..", "java.sql..");

    private static boolean mayWrite(JavaClass type) {
        return !type.tryGetAnnotationOfType(Transactional.class)
                .map(Transactional::readOnly)
                .orElse(false);
    }

    /** Days and times are those of the shop, whatever the machine is set to. */
    @ArchTest
    static final ArchRule NOBODY_ASKS_THE_MACHINE_FOR_ITS_ZONE =
            noClasses().should().accessTargetWhere(describe("takes the machine's zone", ArchitectureTest::takesZone));

    private static boolean takesZone(JavaAccess<?> access) {
        String owner = access.getTargetOwner().getName();
        String name = access.getTarget().getName();
        boolean now = owner.startsWith("java.time.")
                && name.equals("now")
                && !owner.equals("java.time.Instant")
                && access.getTarget() instanceof CodeUnitAccessTarget target
                && target.getRawParameterTypes().isEmpty();
        return now
                || name.equals("systemDefault")
                || name.equals("systemDefaultZone")
                || owner.equals("java.util.TimeZone") && name.equals("getDefault")
                || owner.equals("java.util.Calendar") && name.equals("getInstance")
                || owner.equals("java.sql.Timestamp") && (name.equals("toLocalDateTime") || name.equals("valueOf"))
                || owner.equals("java.text.SimpleDateFormat");
    }

    @ArchTest
    static final ArchRule NO_FIELD_INJECTION = noFields().should().beAnnotatedWith(Autowired.class);

    @ArchTest
    static final ArchRule ONE_JSON_LIBRARY =
            noClasses().should().dependOnClassesThat().resideInAPackage("com.fasterxml.jackson.databind..");

    @ArchTest
    static final ArchRule NO_STATIC_STATE = fields().that().areStatic().should().beFinal();

    /** Several instances share one database, not one memory. */
    @ArchTest
    static final ArchRule COMPONENTS_REMEMBER_NOTHING = fields().that()
            .areDeclaredInClassesThat()
            .areMetaAnnotatedWith(Component.class)
            .and()
            .areNotStatic()
            .should()
            .notHaveRawType(describe("a map or a collection", ArchitectureTest::holdsMany));

    private static boolean holdsMany(JavaClass type) {
        return type.isAssignableTo(Map.class) || type.isAssignableTo(Collection.class);
    }

    private static ArchRule layered() {
        var rule = Architectures.layeredArchitecture().consideringOnlyDependenciesInAnyPackage("headertank.app..");
        for (Layer layer : LAYERS) {
            rule = rule.layer(layer.name())
                    .definedBy(layer.packages().stream()
                            .map(p -> "headertank.app." + p + "..")
                            .toArray(String[]::new));
        }
        int last = LAYERS.size() - 1;
        for (int i = 0; i < last; i++) {
            List<Layer> users = LAYERS.subList(LAYERS.get(i).outermostOnly() ? last : i + 1, last + 1);
            rule = rule.whereLayer(LAYERS.get(i).name())
                    .mayOnlyBeAccessedByLayers(users.stream().map(Layer::name).toArray(String[]::new));
        }
        return rule.whereLayer(LAYERS.get(last).name()).mayNotBeAccessedByAnyLayer();
    }

    private record Layer(List<String> packages, boolean outermostOnly) {

        static Layer of(String... packages) {
            return new Layer(List.of(packages), false);
        }

        Layer forOutermost() {
            return new Layer(packages, true);
        }

        String name() {
            return String.join(" ", packages);
        }
    }
}
