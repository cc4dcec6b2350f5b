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
import headertank.calc.Rater;
import headertank.calc.rating.Plant;
import headertank.calc.result.PointRating;
import java.lang.module.ModuleDescriptor;
import java.lang.module.ModuleFinder;
import java.net.URISyntaxException;
import java.nio.file.Path;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The app asks calc-core through its door: what it takes in, what it hands back, and the rater between them. */
@AnalyzeClasses(packages = "headertank.app", importOptions = ImportOption.DoNotIncludeTests.class)
class DoorTest {

    /** The packages of calc-core that the app may know; the models behind them are nobody's business but the rater's. */
    private static final Set<String> DOOR = Set.of(
            "headertank.calc",
            "headertank.calc.carspec",
            "headertank.calc.cause",
            "headertank.calc.choice",
            "headertank.calc.duty",
            "headertank.calc.evidence",
            "headertank.calc.quantity",
            "headertank.calc.result",
            "headertank.calc.risk",
            "headertank.calc.verdict");

    /** What other programs may import besides, each with its reason. */
    private static final Map<String, String> FOR_PLUG_INS = Map.of(
            "headertank.calc.coreclass", "a CoreClassSource hands over classes of core; the app itself names none");

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

    /** What is exported to other programs is the same door, and what a plug-in needs besides. */
    @ArchTest
    static void theModuleExportsTheDoorAndWhatPlugInsNeed(JavaClasses app) throws URISyntaxException {
        ModuleDescriptor calc = ModuleFinder.of(Path.of(Rater.class
                        .getProtectionDomain()
                        .getCodeSource()
                        .getLocation()
                        .toURI()))
                .find("headertank.calc")
                .orElseThrow()
                .descriptor();
        assertThat(calc.exports()).allMatch(e -> !e.isQualified());
        assertThat(calc.exports())
                .extracting(ModuleDescriptor.Exports::source)
                .containsExactlyInAnyOrderElementsOf(Stream.concat(DOOR.stream(), FOR_PLUG_INS.keySet().stream())
                        .toList());
        Set<String> plugIns = calc.uses().stream()
                .map(name -> name.substring(0, name.lastIndexOf('.')))
                .collect(Collectors.toSet());
        assertThat(plugIns).containsAll(FOR_PLUG_INS.keySet());
    }

    private static boolean isBehind(JavaClass type) {
        return isBehind(type.getName(), type.getPackageName());
    }

    private static boolean isBehind(String name, String inPackage) {
        return name.startsWith("headertank.calc.") && !DOOR.contains(inPackage);
    }
}
