package headertank.app;

import static com.tngtech.archunit.base.DescribedPredicate.describe;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import headertank.calc.rating.Plant;
import headertank.calc.result.PointRating;
import java.util.Set;

/** The app asks calc-core through its door: what it takes in, what it hands back, and the rater between them. */
@AnalyzeClasses(packages = "headertank.app", importOptions = ImportOption.DoNotIncludeTests.class)
class DoorTest {

    /** The packages of calc-core that the app may know; the models behind them are nobody's business but the rater's. */
    private static final Set<String> DOOR = Set.of(
            "headertank.calc",
            "headertank.calc.carspec",
            "headertank.calc.choice",
            "headertank.calc.duty",
            "headertank.calc.evidence",
            "headertank.calc.quantity",
            "headertank.calc.result",
            "headertank.calc.risk",
            "headertank.calc.verdict");

    @ArchTest
    static final ArchRule NOBODY_GOES_BEHIND_THE_DOOR =
            noClasses().should().dependOnClassesThat(describe("are models behind the door", DoorTest::isBehind));

    @ArchTest
    static void theRuleTellsAModelFromAResult(JavaClasses app) {
        assertThat(isBehind(Plant.class.getName(), Plant.class.getPackageName()))
                .isTrue();
        assertThat(isBehind(PointRating.class.getName(), PointRating.class.getPackageName()))
                .isFalse();
    }

    private static boolean isBehind(JavaClass type) {
        return isBehind(type.getName(), type.getPackageName());
    }

    private static boolean isBehind(String name, String inPackage) {
        return name.startsWith("headertank.calc.") && !DOOR.contains(inPackage);
    }
}
