package org.glintery.testkit;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.lang.reflect.Field;
import java.lang.reflect.Modifier;
import java.net.URI;
import java.net.URISyntaxException;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.glintery.api.workshop.DocumentType;

/** The kinds of document that a module declares, looked for in its classes so that no list can lag behind. */
public final class DocumentTypes {
    private DocumentTypes() {}

    /** Those of the API. */
    public static List<DocumentType<?>> ofTheApi() {
        return declaredBeside(DocumentType.class);
    }

    /** Those in constants of any class that lies in the same jar or folder as this one. */
    public static List<DocumentType<?>> declaredBeside(Class<?> one) {
        try {
            URI place = one.getProtectionDomain().getCodeSource().getLocation().toURI();
            if (Files.isDirectory(Path.of(place))) {
                return collected(Path.of(place));
            }
            try (FileSystem jar = FileSystems.newFileSystem(Path.of(place), Map.of())) {
                return collected(jar.getPath("/"));
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (URISyntaxException | ReflectiveOperationException e) {
            throw new IllegalStateException("the classes beside " + one + " can't be read", e);
        }
    }

    private static List<DocumentType<?>> collected(Path root) throws IOException, ReflectiveOperationException {
        List<DocumentType<?>> declared = new ArrayList<>();
        try (Stream<Path> files = Files.walk(root)) {
            for (Path file : files.filter(path -> path.toString().matches(".*(?<!-info)\\.class"))
                    .sorted()
                    .toList()) {
                String name = root.relativize(file).toString().replace('/', '.').replace('\\', '.');
                Class<?> type = Class.forName(name.substring(0, name.length() - ".class".length()));
                for (Field field : type.getDeclaredFields()) {
                    if (field.getType() == DocumentType.class && Modifier.isStatic(field.getModifiers())) {
                        field.setAccessible(true);
                        declared.add((DocumentType<?>) field.get(null));
                    }
                }
            }
        }
        return declared;
    }
}
