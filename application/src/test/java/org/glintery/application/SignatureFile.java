package org.glintery.application;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.lang.reflect.Modifier;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;

/** The signature of what one module exports, as it is committed: types by name. */
record SignatureFile(SortedMap<String, TypeSignature> types) {
    private static final List<String> HEAD = List.of(
            "# What this module exports. Written by ApiSignatureTest; DEVELOPERS.md says how to write it anew.", "");

    static SignatureFile of(Collection<Class<?>> classes) {
        SortedMap<String, TypeSignature> types = new TreeMap<>();
        classes.forEach(type -> types.put(type.getName(), SignatureReading.of(type)));
        return new SignatureFile(types);
    }

    /** Reads a file; one that does not exist has no types. */
    static SignatureFile read(Path file) {
        SortedMap<String, TypeSignature> types = new TreeMap<>();
        List<String> lines = new ArrayList<>();
        for (String line : Files.exists(file) ? lines(file) : List.<String>of()) {
            if (line.isBlank()) {
                keep(lines, types);
            } else if (!line.startsWith("#")) {
                lines.add(line);
            }
        }
        keep(lines, types);
        return new SignatureFile(types);
    }

    private static void keep(List<String> lines, SortedMap<String, TypeSignature> types) {
        if (!lines.isEmpty()) {
            types.put(lines.get(0), TypeSignature.of(lines));
            lines.clear();
        }
    }

    private static List<String> lines(Path file) {
        try {
            return Files.readAllLines(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** This signature with one type as it is now, or without it when nobody outside sees it any more. */
    SignatureFile with(Class<?> type) {
        SortedMap<String, TypeSignature> changed = new TreeMap<>(types);
        changed.remove(type.getName());
        if (Modifier.isPublic(type.getModifiers())) {
            changed.put(type.getName(), SignatureReading.of(type));
        }
        return new SignatureFile(changed);
    }

    /** What add-ons were promised here and would not find there, in words. */
    List<String> brokenBy(SignatureFile now) {
        return types.values().stream()
                .flatMap(type -> type.broken(now.types.get(type.name())).stream())
                .toList();
    }

    String text() {
        List<String> lines = new ArrayList<>(HEAD);
        types.values().forEach(type -> {
            lines.addAll(type.lines());
            lines.add("");
        });
        return String.join("\n", lines);
    }
}
