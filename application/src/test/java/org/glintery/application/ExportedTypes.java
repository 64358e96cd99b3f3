package org.glintery.application;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.lang.reflect.Modifier;
import java.util.Arrays;
import java.util.List;
import java.util.jar.JarEntry;
import java.util.jar.JarFile;

/** The public types in the packages that a module's jar exports. */
final class ExportedTypes {
    private ExportedTypes() {}

    static List<Class<?>> of(String module) {
        try (JarFile jar = new JarFile(Jars.of(module).toFile())) {
            List<String> packages = Arrays.stream(jar.getManifest()
                            .getMainAttributes()
                            .getValue("OpenIDE-Module-Public-Packages")
                            .split(","))
                    .map(String::strip)
                    .toList();
            return jar.stream()
                    .map(JarEntry::getName)
                    .filter(name -> name.endsWith(".class") && !name.endsWith("package-info.class"))
                    .map(name ->
                            name.substring(0, name.length() - ".class".length()).replace('/', '.'))
                    .filter(name -> packages.stream().anyMatch(exported -> covers(exported, name)))
                    .<Class<?>>map(ExportedTypes::loaded)
                    .filter(ExportedTypes::isSeen)
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** @param exported such as {@code org.glintery.colour.*}, or with two stars for all packages below too */
    private static boolean covers(String exported, String type) {
        String start = exported.substring(0, exported.indexOf('*'));
        return type.startsWith(start) && (exported.endsWith("**") || type.indexOf('.', start.length()) < 0);
    }

    private static Class<?> loaded(String name) {
        try {
            return Class.forName(name, false, ExportedTypes.class.getClassLoader());
        } catch (ClassNotFoundException e) {
            throw new IllegalStateException(name + " is in the jar but not on the test's class path", e);
        }
    }

    private static boolean isSeen(Class<?> type) {
        return Modifier.isPublic(type.getModifiers())
                && (type.getEnclosingClass() == null || isSeen(type.getEnclosingClass()));
    }
}
