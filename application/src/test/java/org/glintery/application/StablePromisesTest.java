package org.glintery.application;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaCodeUnit;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.core.domain.JavaType;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is stable can't rest on what may still change. */
class StablePromisesTest {

    @ParameterizedTest
    @CsvSource({"api, 80", "workbench, 15", "colour, 5", "planning, 0"})
    void namesNoPreviewTypeInAStableSignature(String module, int leastTypes) {
        List<Class<?>> stable = ExportedTypes.of(module).stream()
                .filter(type -> status(type).equals("stable"))
                .toList();
        assertThat(stable).as("stable types of %s", module).hasSizeGreaterThanOrEqualTo(leastTypes);
        assertThat(stable.stream().flatMap(StablePromisesTest::shaky))
                .as("previews that stable types of %s show", module)
                .isEmpty();
    }

    /** Stable by what is around it, with a preview inside an optional. */
    public record Planted(java.util.Optional<org.glintery.api.verb.TextTable> table) {}

    @Test
    void findsAPreviewThatIsPlanted() {
        assertThat(shaky(Planted.class)).anyMatch(line -> line.endsWith("org.glintery.api.verb.TextTable"));
    }

    private static Stream<String> shaky(Class<?> type) {
        JavaClass read = new ClassFileImporter().importClass(type);
        Stream<JavaType> ofMethods = read.getCodeUnits().stream()
                .filter(StablePromisesTest::isSeen)
                .flatMap(unit -> Stream.concat(Stream.of(unit.getReturnType()), unit.getParameterTypes().stream()));
        Stream<JavaType> ofFields = read.getFields().stream()
                .filter(field -> field.getModifiers().contains(JavaModifier.PUBLIC))
                .map(field -> field.getType());
        Stream<JavaType> above = Stream.concat(read.getSuperclass().stream(), read.getInterfaces().stream());
        return Stream.of(ofMethods, ofFields, above)
                .flatMap(types -> types)
                .flatMap(shown -> shown.getAllInvolvedRawTypes().stream())
                .filter(shown -> shown.getName().startsWith("org.glintery."))
                .filter(shown -> status(shown.reflect()).startsWith("preview"))
                .map(shown -> type.getName() + " shows " + shown.getName())
                .distinct();
    }

    private static boolean isSeen(JavaCodeUnit unit) {
        return unit.getModifiers().contains(JavaModifier.PUBLIC)
                || unit.getModifiers().contains(JavaModifier.PROTECTED);
    }

    private static String status(Class<?> type) {
        return SignatureReading.status(type).orElse("nothing said");
    }
}
