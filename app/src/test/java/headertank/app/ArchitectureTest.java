package headertank.app;

import static com.tngtech.archunit.base.DescribedPredicate.describe;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.fields;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noFields;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.library.Architectures;
import jakarta.persistence.Entity;
import java.util.Collection;
import java.util.Map;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.data.repository.Repository;
import org.springframework.stereotype.Component;

/** How the app hangs together. */
@AnalyzeClasses(packages = "headertank.app", importOptions = ImportOption.DoNotIncludeTests.class)
class ArchitectureTest {

    @ArchTest
    static final ArchRule FEATURES_DEPEND_ONE_WAY =
            slices().matching("headertank.app.(*)..").should().beFreeOfCycles();

    /** Each feature uses those below it; a new one gets its line here. */
    @ArchTest
    static final ArchRule LAYERS = Architectures.layeredArchitecture()
            .consideringOnlyDependenciesInAnyPackage("headertank.app..")
            .withOptionalLayers(true)
            .layer("ground")
            .definedBy(
                    "headertank.app.unit..",
                    "headertank.app.csv..",
                    "headertank.app.problem..",
                    "headertank.app.database..",
                    "headertank.app.stored..")
            .layer("shop")
            .definedBy("headertank.app.shop..")
            .layer("audit")
            .definedBy("headertank.app.audit..")
            .layer("account")
            .definedBy("headertank.app.account..", "headertank.app.language..", "headertank.app.settings..")
            .layer("field")
            .definedBy("headertank.app.field..")
            .layer("car")
            .definedBy("headertank.app.car..", "headertank.app.part..", "headertank.app.duty..")
            .layer("carspec")
            .definedBy("headertank.app.carspec..")
            .layer("check")
            .definedBy("headertank.app.check..")
            .layer("handover")
            .definedBy("headertank.app.handover..")
            .layer("advice")
            .definedBy("headertank.app.advice..", "headertank.app.logimport..")
            .layer("incident")
            .definedBy("headertank.app.incident..", "headertank.app.job..")
            .layer("drawing")
            .definedBy("headertank.app.drawing..")
            .layer("outermost")
            .definedBy(
                    "headertank.app.print..",
                    "headertank.app.api..",
                    "headertank.app.command..",
                    "headertank.app.demo..")
            .whereLayer("outermost")
            .mayNotBeAccessedByAnyLayer()
            .whereLayer("drawing")
            .mayOnlyBeAccessedByLayers("outermost")
            .whereLayer("incident")
            .mayOnlyBeAccessedByLayers("outermost")
            .whereLayer("advice")
            .mayOnlyBeAccessedByLayers("outermost", "incident")
            .whereLayer("handover")
            .mayOnlyBeAccessedByLayers("outermost")
            .whereLayer("check")
            .mayOnlyBeAccessedByLayers("outermost", "incident", "advice", "drawing", "handover")
            .whereLayer("carspec")
            .mayOnlyBeAccessedByLayers("outermost", "incident", "advice", "drawing", "handover", "check")
            .whereLayer("car")
            .mayOnlyBeAccessedByLayers("outermost", "incident", "advice", "drawing", "handover", "check", "carspec")
            .whereLayer("field")
            .mayOnlyBeAccessedByLayers(
                    "outermost", "incident", "advice", "drawing", "handover", "check", "carspec", "car")
            .whereLayer("account")
            .mayOnlyBeAccessedByLayers(
                    "outermost", "incident", "advice", "drawing", "handover", "check", "carspec", "car", "field");

    @ArchTest
    static final ArchRule REPOSITORIES_STAY_IN_THEIR_FEATURE =
            classes().that().areAssignableTo(Repository.class).should().bePackagePrivate();

    @ArchTest
    static final ArchRule ENTITIES_STAY_IN_THEIR_FEATURE =
            classes().that().areAnnotatedWith(Entity.class).should().bePackagePrivate();

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
}
