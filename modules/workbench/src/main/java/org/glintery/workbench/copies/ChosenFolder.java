package org.glintery.workbench.copies;

import java.nio.charset.StandardCharsets;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.UUID;
import java.util.logging.Level;
import java.util.logging.Logger;
import java.util.prefs.BackingStoreException;
import java.util.prefs.Preferences;

/**
 * The folder that a workshop is copied into, and what went wrong there last. It is this computer's choice and no part of the
 * workshop: one that was moved to another computer must not write to a folder chosen here. Any thread.
 */
final class ChosenFolder {
    private static final Logger LOG = Logger.getLogger(ChosenFolder.class.getName());
    private static final String FOLDER = "folder";
    private static final String TROUBLE = "trouble";
    private static final String TOLD = "told";
    private final Preferences kept;

    /** @param preferences of this computer @param workshop its folder */
    ChosenFolder(Preferences preferences, Path workshop) {
        byte[] place = workshop.toAbsolutePath().normalize().toString().getBytes(StandardCharsets.UTF_8);
        // a path is too long for the name of a node
        kept = preferences
                .node("secondFolder")
                .node(UUID.nameUUIDFromBytes(place).toString());
    }

    Optional<Path> folder() {
        try {
            return Optional.ofNullable(kept.get(FOLDER, null)).map(Path::of);
        } catch (InvalidPathException e) {
            return Optional.empty(); // written on another system
        }
    }

    /** Disk. */
    void choose(Path folder) {
        kept.put(FOLDER, folder.toAbsolutePath().normalize().toString());
        wentWell();
    }

    void forget() {
        kept.remove(FOLDER);
        clear();
    }

    /** What went wrong since the last copy. */
    Optional<String> trouble() {
        return Optional.ofNullable(kept.get(TROUBLE, null));
    }

    /** Trouble that follows trouble is not told again. Disk. */
    void wentWrong(String sentence) {
        boolean again = trouble().isPresent() && kept.getBoolean(TOLD, false);
        kept.put(TROUBLE, sentence);
        kept.putBoolean(TOLD, again);
        flush();
    }

    /** Disk. */
    void wentWell() {
        clear();
        flush();
    }

    private void clear() {
        kept.remove(TROUBLE);
        kept.remove(TOLD);
    }

    /** At once: what is put while the application ends would not be written by itself any more. */
    private void flush() {
        try {
            kept.flush();
        } catch (BackingStoreException e) {
            LOG.log(Level.INFO, "How the copying went could not be remembered", e);
        }
    }

    /** Trouble the user has not heard of yet. */
    Optional<String> untold() {
        return trouble().filter(sentence -> !kept.getBoolean(TOLD, false));
    }

    void wasTold() {
        kept.putBoolean(TOLD, true);
    }
}
