package org.glintery.application;

import static com.tngtech.archunit.base.DescribedPredicate.not;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideOutsideOfPackages;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static org.assertj.core.api.Assertions.assertThat;
import static org.glintery.application.ScannedModules.CLASSES;
import static org.glintery.application.ScannedModules.LEAST_CLASSES;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.jar.JarFile;
import java.util.stream.Stream;
import org.glintery.api.Preview;
import org.glintery.api.Stable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The arrows between the modules, as DESIGN gives them, held on the jars that are shipped. */
class ArchitectureTest {

    private static final String OURS = "org.glintery..";

    /** Charts for its CSV reader alone: colour cards come as CSV too. */
    private static final Set<String> MAY_USE_JACKSON = Set.of("records", "exchange", "charts");

    private static final Map<String, Set<String>> MAY_USE = Map.ofEntries(
            Map.entry("api", Set.of()),
            Map.entry("colour", Set.of()),
            Map.entry("planning", Set.of()),
            Map.entry("records", Set.of("api")),
            Map.entry("exchange", Set.of("api")),
            Map.entry("workbench", Set.of("api", "colour")),
            Map.entry("stash", Set.of("api", "workbench", "colour", "planning")),
            Map.entry("activework", Set.of("api", "workbench", "colour", "planning")),
            Map.entry("finishes", Set.of("api", "workbench", "colour", "planning")),
            Map.entry("storage", Set.of("api", "workbench", "colour", "planning")),
            Map.entry("framing", Set.of("api", "workbench", "colour", "planning")),
            Map.entry("charts", Set.of("api", "workbench", "colour", "planning")),
            Map.entry("commands", Set.of("api")),
            Map.entry("demo", Set.of("api", "colour")));

    /** Marks on public types; colour and planning know nothing else of the api. */
    private static final DescribedPredicate<JavaClass> A_MARK = DescribedPredicate.describe(
            "a mark",
            type -> Set.of(Stable.class.getName(), Preview.class.getName()).contains(type.getName()));

    @Test
    void sawTheClassesOfEveryModule() {
        assertThat(Jars.modules()).containsExactlyInAnyOrderElementsOf(LEAST_CLASSES.keySet());
        LEAST_CLASSES.forEach((module, least) -> assertThat(CLASSES.get(module).size())
                .as("classes of %s", module)
                .isGreaterThanOrEqualTo(least));
    }

    @Test
    void keepsTheArrowsBetweenModules() {
        MAY_USE.forEach((module, others) -> {
            String[] allowed = Stream.concat(Stream.of(module), others.stream())
                    .map(name -> "org.glintery." + name + "..")
                    .toArray(String[]::new);
            noClasses()
                    .should()
                    .dependOnClassesThat(resideInAnyPackage(OURS)
                            .and(resideOutsideOfPackages(allowed))
                            .and(not(A_MARK)))
                    .because(module + " may use only " + others)
                    .check(CLASSES.get(module));
        });
    }

    @Test
    void letsAddOnsUseOnlyWhatAnOutsiderHas() throws IOException {
        keepsToTheApi(Jars.SAMPLE, "org.glintery.addon.sample..", 6);
        keepsToTheApi(Jars.CLUB, "org.glintery.club..", 15);
        keepsToTheApi(Jars.SWAPS, "org.glintery.club.swaps..", 6);
    }

    private static void keepsToTheApi(Path addon, String own, int leastClasses) throws IOException {
        try (JarFile jar = new JarFile(addon.toFile())) {
            JavaClasses classes = new ClassFileImporter().importJar(jar);
            assertThat(classes.size()).as("classes of %s", addon).isGreaterThanOrEqualTo(leastClasses);
            noClasses()
                    .should()
                    .dependOnClassesThat(resideInAnyPackage(OURS)
                            .and(resideOutsideOfPackages(
                                    own,
                                    "org.glintery.api..",
                                    "org.glintery.colour",
                                    "org.glintery.planning",
                                    "org.glintery.planning.clearing",
                                    "org.glintery.workbench.parts..",
                                    "org.glintery.workbench.spi..")))
                    .check(classes);
        }
    }

    @Test
    void keepsScreensDatabasesAndJacksonOutOfTheApi() {
        classes()
                .should()
                .onlyDependOnClassesThat(resideInAnyPackage(
                        "java.lang..",
                        "java.io..",
                        "java.math..",
                        "java.net..",
                        "java.nio..",
                        "java.security..",
                        "java.text..",
                        "java.time..",
                        "java.util..",
                        "javax.imageio..",
                        "org.glintery.api..",
                        "org.openide.util.."))
                .check(CLASSES.get("api"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"colour", "planning"})
    void keepsSciencesOnPlainJava(String module) {
        classes()
                .should()
                .onlyDependOnClassesThat(resideInAnyPackage(
                                "java.lang..", "java.math..", "java.util..", "java.io..", "java.nio.charset..")
                        .or(resideInAnyPackage("org.glintery." + module + ".."))
                        .or(A_MARK))
                .check(CLASSES.get(module));
    }

    @ParameterizedTest
    @ValueSource(strings = {"stash", "activework", "finishes", "storage", "framing"})
    void keepsServicesAndVerbsFreeOfScreens(String feature) {
        noClasses()
                .that(not(resideInAnyPackage("org.glintery." + feature + ".ui..")))
                .should()
                .dependOnClassesThat(
                        resideInAnyPackage("javax.swing..", "java.awt..", "org.openide.windows..", "org.openide.awt.."))
                .check(CLASSES.get(feature));
    }

    /** Pictures are its trade, so that it may use images, colour profiles and outlines, but nothing that is on a screen. */
    @Test
    void keepsTheWorkOfChartsFreeOfScreens() {
        noClasses()
                .that(not(resideInAnyPackage("org.glintery.charts.ui..")))
                .should()
                .dependOnClassesThat(resideInAnyPackage(
                        "javax.swing..", "java.awt", "java.awt.event..", "org.openide.windows..", "org.openide.awt.."))
                .check(CLASSES.get("charts"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"records", "exchange", "commands"})
    void keepsScreensOutOfTheDepths(String module) {
        noClasses()
                .should()
                .dependOnClassesThat(resideInAnyPackage("javax.swing..", "org.openide.windows.."))
                .check(CLASSES.get(module));
    }

    @Test
    void keepsJacksonWhereJsonIsReadAndWritten() {
        CLASSES.forEach((module, classes) -> {
            if (!MAY_USE_JACKSON.contains(module)) {
                noClasses()
                        .should()
                        .dependOnClassesThat(resideInAnyPackage("com.fasterxml.."))
                        .check(classes);
            }
        });
    }

    @Test
    void hasOneHomeForTheDatabase() {
        CLASSES.forEach((module, classes) -> {
            if (!module.equals("records")) {
                noClasses()
                        .should()
                        .dependOnClassesThat(resideInAnyPackage("java.sql..", "javax.sql..", "org.h2.."))
                        .check(classes);
            }
        });
    }

    @Test
    void namesSayHowOrWhat() {
        List<String> vague = CLASSES.values().stream()
                .flatMap(classes -> classes.stream())
                .map(JavaClass::getSimpleName)
                .filter(name -> name.matches(".*(Impl|Manager|Helper|Helpers|Util|Utils)"))
                .toList();
        assertThat(vague).isEmpty();
    }
}
