package org.glintery.workbench.start;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.prefs.Preferences;

/** Remembers which workshop was open last. */
final class LastFolder {
    private static final String KEY = "lastWorkshop";
    private final Preferences preferences;

    LastFolder(Preferences preferences) {
        this.preferences = preferences;
    }

    Optional<Path> get() {
        try {
            return Optional.ofNullable(preferences.get(KEY, null)).map(Path::of);
        } catch (InvalidPathException e) {
            return Optional.empty(); // written on another system
        }
    }

    void put(Path folder) {
        preferences.put(KEY, folder.toAbsolutePath().toString());
    }
}
