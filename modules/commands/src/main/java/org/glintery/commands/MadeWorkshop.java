package org.glintery.commands;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import org.glintery.api.workshop.Workshop;

/** A workshop that this call made because there was none; taken away again when nothing was put into it. Verb thread only. */
final class MadeWorkshop {
    private final Workshop workshop;
    private final long empty;
    private final boolean folderWasThere;

    MadeWorkshop(Workshop workshop, boolean folderWasThere) {
        this.workshop = workshop;
        this.empty = workshop.view().revision();
        this.folderWasThere = folderWasThere;
    }

    boolean isUntouched() {
        return workshop.view().revision() == empty;
    }

    /** Call when it is closed. Only what we made ourselves lies there: it was made in a new or empty folder. */
    void takeAway() {
        Path folder = workshop.folder();
        try (Stream<Path> files = Files.walk(folder)) {
            List<Path> all = files.sorted(Comparator.reverseOrder()).toList();
            for (Path file : all) {
                if (!(folderWasThere && file.equals(folder))) {
                    Files.delete(file);
                }
            }
        } catch (IOException | UncheckedIOException e) {
            // an empty workshop is left behind: the next call opens it
        }
    }
}
