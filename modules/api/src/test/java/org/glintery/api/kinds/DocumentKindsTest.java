package org.glintery.api.kinds;

import static org.assertj.core.api.Assertions.assertThat;

import java.lang.reflect.Field;
import java.lang.reflect.Modifier;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import java.util.stream.Stream;
import org.glintery.api.stash.Piece;
import org.glintery.api.workshop.DocRef;
import org.glintery.api.workshop.DocumentType;
import org.junit.jupiter.api.Test;

class DocumentKindsTest {
    private static final Path CLASSES = Path.of("target/classes");
    private static final int LEAST_CLASSES = 80;

    @Test
    void listsEveryKindThatTheApiNames() throws Exception {
        List<Object> named = new ArrayList<>();
        int looked = 0;
        try (Stream<Path> files = Files.walk(CLASSES.resolve("org"))) {
            for (Path file : files.filter(f -> f.toString().endsWith(".class")).toList()) {
                String name = CLASSES.relativize(file)
                        .toString()
                        .replaceAll("\\.class$", "")
                        .replace('/', '.');
                if (name.endsWith("package-info")) {
                    continue;
                }
                looked++;
                for (Field field : Class.forName(name).getDeclaredFields()) {
                    if (field.getType() == DocumentType.class && Modifier.isStatic(field.getModifiers())) {
                        named.add(field.get(null));
                    }
                }
            }
        }
        assertThat(looked).isGreaterThan(LEAST_CLASSES);
        assertThat(DocumentKinds.ALL)
                .containsExactlyInAnyOrderElementsOf(cast(named))
                .doesNotHaveDuplicates();
    }

    private static List<DocumentType<?>> cast(List<Object> types) {
        return types.stream()
                .<DocumentType<?>>map(type -> (DocumentType<?>) type)
                .toList();
    }

    @Test
    void tellsWhichKindADocumentIsOf() {
        assertThat(DocumentKinds.of(Piece.TYPE.ref(new UUID(1, 1)))).contains(Piece.TYPE);
        assertThat(DocumentKinds.of(new DocRef("an-add-on", "piece", new UUID(1, 1))))
                .isEmpty();
    }
}
