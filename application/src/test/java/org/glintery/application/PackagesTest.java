package org.glintery.application;

import static com.tngtech.archunit.base.DescribedPredicate.not;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.glintery.application.ScannedModules.CLASSES;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.library.dependencies.SliceAssignment;
import com.tngtech.archunit.library.dependencies.SliceIdentifier;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.openide.util.Lookup;

/** The order within the modules, held on the jars that are shipped. */
class PackagesTest {
    /** Fewer would mean that not all of them were looked at. */
    private static final int LEAST_PACKAGES = 50;

    /** Every package below a root a slice of its own; remembers which it saw. */
    private static final class ByPackage implements SliceAssignment {
        private final Set<String> seen = new TreeSet<>();
        private final String root;

        ByPackage(String root) {
            this.root = root;
        }

        @Override
        public SliceIdentifier getIdentifierOf(JavaClass type) {
            if (!type.getPackageName().startsWith(root)) {
                return SliceIdentifier.ignore();
            }
            seen.add(type.getPackageName());
            return SliceIdentifier.of(type.getPackageName());
        }

        @Override
        public String getDescription() {
            return "packages";
        }
    }

    private static void hasNoCycles(ByPackage packages, JavaClasses classes) {
        slices().assignedFrom(packages).should().beFreeOfCycles().check(classes);
    }

    @Test
    void hasNoCyclesBetweenPackagesOfAModule() {
        Set<String> seen = new TreeSet<>();
        CLASSES.forEach((module, classes) -> {
            var packages = new ByPackage("org.glintery." + module);
            hasNoCycles(packages, classes);
            assertThat(packages.seen).as("packages of %s", module).isNotEmpty();
            seen.addAll(packages.seen);
        });
        assertThat(seen).hasSizeGreaterThanOrEqualTo(LEAST_PACKAGES);
    }

    @Test
    void findsACycleThatIsThere() {
        JavaClasses twoOfJava = new ClassFileImporter().importClasses(Optional.class, Stream.class);
        assertThatThrownBy(() -> hasNoCycles(new ByPackage("java.util"), twoOfJava))
                .isInstanceOf(AssertionError.class)
                .hasMessageContaining("Cycle detected");
    }

    @ParameterizedTest
    @ValueSource(strings = {"stash", "activework", "finishes", "storage", "framing", "charts"})
    void keepsTheWorkbenchToTheScreens(String feature) {
        noClasses()
                .that(not(resideInAnyPackage("org.glintery." + feature + ".ui..")))
                .should()
                .dependOnClassesThat(resideInAnyPackage("org.glintery.workbench.."))
                .check(CLASSES.get(feature));
    }

    /** Their package pages say so: nothing there reads the disk. */
    @ParameterizedTest
    @ValueSource(strings = {"stash", "activework", "finishes", "storage", "framing", "charts"})
    void keepsTheDiskOutOfTheServices(String feature) {
        noClasses()
                .that(resideInAnyPackage("org.glintery." + feature))
                .should()
                .dependOnClassesThat(resideInAnyPackage("java.io..", "java.nio.file..", "java.nio.channels.."))
                .check(CLASSES.get(feature));
    }

    @Test
    void asksTheLookupInOnePlaceAModuleAtMost() {
        int all = 0;
        for (var module : CLASSES.entrySet()) {
            List<String> places = module.getValue().stream()
                    .flatMap(type -> type.getMethodCallsFromSelf().stream())
                    .filter(call -> call.getTargetOwner().isEquivalentTo(Lookup.class)
                            && call.getName().equals("getDefault"))
                    .map(call -> call.getOrigin().getFullName())
                    .toList();
            assertThat(places).as("where %s asks", module.getKey()).hasSizeLessThanOrEqualTo(1);
            all += places.size();
        }
        assertThat(all).as("places seen").isGreaterThanOrEqualTo(3);
    }
}
