package headertank.app;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaCodeUnit;
import com.tngtech.archunit.core.domain.JavaConstructor;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import jakarta.persistence.Entity;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.net.URL;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.Collections;
import java.util.Deque;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;

/**
 * Nothing in the main code is there for tests alone: every method and constructor is reached from where a program, a request,
 * a page, Spring or a plug-in enters, or is what {@link #KEPT} keeps and why.
 *
 * <p>A call of a method reaches what overrides it. Names that occur in a template count as called, whatever their class.
 * Accessors of records and constants that the compiler copies are not looked at.
 */
class UnusedCodeTest {

    /** What other programs call, or what is kept for a reason that stands beside it. */
    private static final List<String> KEPT = List.of(
            // A program that embeds calc-core states its figures and asks with these, see docs/embedding.md.
            "DutyOutcome.errorTooHot",
            "Rater.coreClasses",
            "Stated.advertised",
            "Stated.datasheet",
            // The same program's evidence about its cars: what was seen of one, and what follows from it.
            "CoreSheet",
            "CoreSheet$Point",
            "NeverHot",
            "FanSheet",
            "FanSheet$Point",
            "PumpSheet",
            "PumpSheet$Point",
            // The same program's maker's sheet of a fan.
            "FanFit$Point",
            "FanFit.throughPoints",
            // A figure inside the coolant factor that has a published counterpart.
            "Fuel.latentHeatJPerKg");

    private static final Path TEMPLATES = Path.of("src", "main", "resources", "templates");
    private static final Pattern WORD = Pattern.compile("\\w+");

    private static final JavaClasses MAIN = new ClassFileImporter()
            .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
            .importPackages("headertank");

    private final Set<JavaCodeUnit> reached = new HashSet<>();
    private final Deque<JavaCodeUnit> toFollow = new ArrayDeque<>();

    @Test
    void nothingIsThereForTestsAlone() throws IOException {
        Set<String> inTemplates = wordsOfTemplates();
        Set<String> plugIns = plugIns();
        reach(units().filter(u -> isEntered(u, inTemplates, plugIns)));
        Set<String> keptForNothing = new TreeSet<>();
        reached.stream().filter(UnusedCodeTest::isKept).forEach(u -> keptForNothing.add(name(u)));
        reach(units().filter(UnusedCodeTest::isKept));
        Set<String> unused = new TreeSet<>();
        units().filter(u -> !reached.contains(u) && !u.getModifiers().contains(JavaModifier.SYNTHETIC))
                .forEach(u -> unused.add(u.getFullName()));
        assertThat(unused).isEmpty();
        assertThat(keptForNothing).as("kept, and called by now").isEmpty();
    }

    @Test
    void whatIsKeptIsThere() {
        assertThat(KEPT).allSatisfy(k -> assertThat(units()).anyMatch(u -> name(u).equals(k)));
    }

    private static Stream<JavaCodeUnit> units() {
        return MAIN.stream().flatMap(c -> c.getCodeUnits().stream());
    }

    private static boolean isKept(JavaCodeUnit unit) {
        return KEPT.contains(name(unit));
    }

    private static String name(JavaCodeUnit unit) {
        String owner = unit.getOwner().getName();
        return owner.substring(owner.lastIndexOf('.') + 1)
                + (unit instanceof JavaConstructor ? "" : "." + unit.getName());
    }

    private void reach(Stream<JavaCodeUnit> units) {
        units.forEach(this::reach);
        while (!toFollow.isEmpty()) {
            follow(toFollow.pop());
        }
    }

    private void reach(JavaCodeUnit unit) {
        if (reached.add(unit)) {
            toFollow.add(unit);
        }
    }

    private void follow(JavaCodeUnit unit) {
        unit.getCallsFromSelf().forEach(c -> c.getTarget().resolveMember().ifPresent(this::reach));
        unit.getCodeUnitReferencesFromSelf()
                .forEach(r -> r.getTarget().resolveMember().ifPresent(this::reach));
        if (!(unit instanceof JavaConstructor)) {
            String[] parameters = parameters(unit);
            unit.getOwner().getAllSubclasses().forEach(c -> c.tryGetMethod(unit.getName(), parameters)
                    .ifPresent(this::reach));
        }
    }

    /** Whether something outside our own code calls it. */
    private static boolean isEntered(JavaCodeUnit unit, Set<String> inTemplates, Set<String> plugIns) {
        JavaClass owner = unit.getOwner();
        if (unit instanceof JavaConstructor) {
            return owner.isMetaAnnotatedWith(Component.class)
                    || owner.isMetaAnnotatedWith(Entity.class)
                    || owner.isEnum()
                    || plugIns.contains(owner.getName())
                    || isMadeForOthers(unit)
                    || isHidden(unit);
        }
        return unit.getName().equals("<clinit>")
                || unit.getName().equals("main")
                || isMadeByTheCompiler(unit)
                || isNamed(unit.getName(), inTemplates)
                || unit.getAnnotations().stream().anyMatch(a -> isAnEntry(a.getRawType()))
                || overridesForeignMethod(unit);
    }

    /** The constructor of a validator, condition or analyzer: Spring makes those that an annotation or a file names. */
    private static boolean isMadeForOthers(JavaCodeUnit constructor) {
        JavaClass owner = constructor.getOwner();
        return constructor.getRawParameterTypes().isEmpty()
                && Stream.concat(owner.getAllRawSuperclasses().stream(), owner.getAllRawInterfaces().stream())
                        .anyMatch(s -> s.getPackageName().startsWith("org.springframework")
                                || s.getPackageName().startsWith("jakarta"));
    }

    /** The constructor of a class that has static methods only. */
    private static boolean isHidden(JavaCodeUnit constructor) {
        return constructor.getModifiers().contains(JavaModifier.PRIVATE)
                && constructor.getRawParameterTypes().isEmpty();
    }

    private static boolean isMadeByTheCompiler(JavaCodeUnit unit) {
        JavaClass owner = unit.getOwner();
        return owner.isAnnotation()
                || (owner.isEnum() && Set.of("values", "valueOf").contains(unit.getName()))
                || (owner.isRecord()
                        && unit.getRawParameterTypes().isEmpty()
                        && owner.tryGetField(unit.getName()).isPresent());
    }

    private static boolean isNamed(String method, Set<String> inTemplates) {
        Matcher property = Pattern.compile("(?:get|is)(\\w)(\\w*)").matcher(method);
        return inTemplates.contains(method)
                || (property.matches() && inTemplates.contains(property.group(1).toLowerCase() + property.group(2)));
    }

    private static boolean isAnEntry(JavaClass annotation) {
        return !annotation.getPackageName().startsWith("java.lang") && !annotation.isEquivalentTo(Transactional.class);
    }

    private static boolean overridesForeignMethod(JavaCodeUnit unit) {
        JavaClass owner = unit.getOwner();
        return Stream.concat(owner.getAllRawSuperclasses().stream(), owner.getAllRawInterfaces().stream())
                .filter(s -> !s.getPackageName().startsWith("headertank"))
                .flatMap(s -> s.getMethods().stream())
                .anyMatch(m -> m.getName().equals(unit.getName())
                        && m.getRawParameterTypes().size()
                                == unit.getRawParameterTypes().size());
    }

    private static String[] parameters(JavaCodeUnit unit) {
        return unit.getRawParameterTypes().stream().map(JavaClass::getName).toArray(String[]::new);
    }

    private static Set<String> wordsOfTemplates() throws IOException {
        Set<String> words = new HashSet<>();
        try (var files = Files.walk(TEMPLATES)) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                Matcher word = WORD.matcher(Files.readString(file));
                while (word.find()) {
                    words.add(word.group());
                }
            }
        }
        assertThat(words).hasSizeGreaterThan(100);
        return words;
    }

    /** Classes that {@link java.util.ServiceLoader} makes. */
    private static Set<String> plugIns() throws IOException {
        Set<String> names = new HashSet<>();
        for (JavaClass type : MAIN) {
            for (URL file : Collections.list(
                    UnusedCodeTest.class.getClassLoader().getResources("META-INF/services/" + type.getName()))) {
                try (var lines = new BufferedReader(new InputStreamReader(file.openStream(), StandardCharsets.UTF_8))) {
                    lines.lines().map(String::strip).forEach(names::add);
                }
            }
        }
        assertThat(names).hasSizeGreaterThan(10);
        return names;
    }
}
