package org.glintery.application;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Collections;
import java.util.Map;
import java.util.TreeMap;
import java.util.jar.Attributes;
import java.util.jar.JarFile;

/** The classes of our modules as they are shipped, by module, and what their manifests say. */
final class ScannedModules {

    /** Module to the least number of classes it must have been scanned with: none is looked at by mistake. */
    static final Map<String, Integer> LEAST_CLASSES = Map.ofEntries(
            Map.entry("api", 80),
            Map.entry("colour", 10),
            Map.entry("charts", 10),
            Map.entry("planning", 5),
            Map.entry("records", 30),
            Map.entry("exchange", 10),
            Map.entry("workbench", 100),
            Map.entry("stash", 40),
            Map.entry("activework", 15),
            Map.entry("finishes", 10),
            Map.entry("storage", 25),
            Map.entry("framing", 10),
            Map.entry("commands", 30),
            Map.entry("demo", 10));

    static final Map<String, JavaClasses> CLASSES = scanned();

    private ScannedModules() {}

    private static Map<String, JavaClasses> scanned() {
        Map<String, JavaClasses> scanned = new TreeMap<>();
        for (String module : LEAST_CLASSES.keySet()) {
            try (JarFile jar = new JarFile(Jars.of(module).toFile())) {
                scanned.put(module, new ClassFileImporter().importJar(jar));
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }
        return Collections.unmodifiableMap(scanned);
    }

    static Attributes manifest(String module) {
        try (JarFile jar = new JarFile(Jars.of(module).toFile())) {
            return jar.getManifest().getMainAttributes();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
