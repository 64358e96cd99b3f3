package org.glintery.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.lang.reflect.Field;
import java.lang.reflect.Modifier;
import java.net.URI;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.glintery.api.exchange.TableFiles;
import org.glintery.api.workshop.DocumentType;
import org.glintery.api.workshop.Workshop;
import org.glintery.api.workshop.Workshop.CopyReport;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Everything that a workshop can hold goes out and comes in again the same. */
class RoundTripTest {
    @TempDir
    Path temp;

    private Workshop first;
    private Workshop second;

    @BeforeEach
    void open() {
        first = TestWorkshops.create(temp.resolve("first"));
        second = TestWorkshops.create(temp.resolve("second"));
        WholeWorkshop.fill(first);
    }

    @AfterEach
    void close() {
        first.close();
        second.close();
    }

    @Test
    void givesAnEqualWorkshop_throughTables() {
        Path zip = temp.resolve("tables.zip");
        CopyReport out =
                first.find(TableFiles.class).orElseThrow().exportTables(zip).orThrow();
        CopyReport in =
                second.find(TableFiles.class).orElseThrow().importTables(zip).orThrow();
        assertThat(in).isEqualTo(out);
        assertThat(out.documents()).isEqualTo(15 * 3 + 2);
        assertThat(out.movements()).isEqualTo(5);
        assertThat(out.blobs()).isEqualTo(2);
        WholeWorkshop.assertEqual(first, second);
        assertThat(second.history(10)).hasSize(1);
        assertThat(second.folder().toFile().list()).noneMatch(name -> name.startsWith("import"));
    }

    @Test
    void givesAnEqualWorkshop_throughJson() {
        Path file = temp.resolve("workshop.json");
        first.exportJson(file).orThrow();
        second.importJson(file).orThrow();
        WholeWorkshop.assertEqual(first, second);
    }

    /** The list of kinds can't lag behind the API: its classes are looked through for them. */
    @Test
    void knowsEveryKindOfDocument_thatTheApiDeclares() throws Exception {
        Set<String> declared = new HashSet<>();
        URI api = DocumentType.class
                .getProtectionDomain()
                .getCodeSource()
                .getLocation()
                .toURI();
        if (Files.isDirectory(Path.of(api))) {
            collect(Path.of(api), declared);
        } else {
            try (FileSystem jar = FileSystems.newFileSystem(Path.of(api), Map.of())) {
                collect(jar.getPath("/"), declared);
            }
        }
        assertThat(declared).isNotEmpty();
        assertThat(WholeWorkshop.TYPES.stream().map(type -> type.owner() + "." + type.name()))
                .containsExactlyInAnyOrderElementsOf(declared);
    }

    private static void collect(Path root, Set<String> declared) throws IOException, ReflectiveOperationException {
        try (Stream<Path> files = Files.walk(root)) {
            for (Path file : files.filter(f ->
                            f.toString().endsWith(".class") && !f.toString().endsWith("-info.class"))
                    .toList()) {
                String name = root.relativize(file).toString().replace('/', '.').replace('\\', '.');
                Class<?> type = Class.forName(name.substring(0, name.length() - ".class".length()));
                for (Field field : type.getDeclaredFields()) {
                    if (field.getType() == DocumentType.class && Modifier.isStatic(field.getModifiers())) {
                        field.setAccessible(true);
                        DocumentType<?> kind = (DocumentType<?>) field.get(null);
                        declared.add(kind.owner() + "." + kind.name());
                    }
                }
            }
        }
    }
}
