package org.glintery.commands;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Optional;
import java.util.logging.Level;
import java.util.logging.LogRecord;
import java.util.logging.SimpleFormatter;
import org.openide.util.NbBundle.Messages;

/** Keeps a fault of ours in a file, and tells the user without its stack trace. */
final class FaultLog {

    private static final String NAME = "faults.log";

    private final Optional<Path> folder;

    /** @param folder of the open workshop; without one the file goes where temporary files go */
    FaultLog(Optional<Path> folder) {
        this.folder = folder;
    }

    /** Writes it down. The sentences say what happened, what was kept and where the details are. */
    @Messages({
        "# {0} - verb",
        "# {1} - file",
        "FaultLog.kept=Something went wrong in Glintery itself while it did ''{0}''. What was answered before is kept; a change is made whole or not at all, so nothing is half done. Details are in {1}.",
        "# {0} - verb",
        "# {1} - the fault",
        "FaultLog.notKept=Something went wrong in Glintery itself while it did ''{0}''. What was answered before is kept; a change is made whole or not at all, so nothing is half done. The details could be written nowhere; the fault was {1}."
    })
    String keep(Throwable fault, String what) {
        return written(entry(fault, what))
                .map(file -> Bundle.FaultLog_kept(what, file))
                .orElseGet(() -> Bundle.FaultLog_notKept(what, fault));
    }

    private Optional<Path> written(String entry) {
        Optional<Path> inWorkshop = folder.flatMap(f -> append(f.resolve(NAME), entry));
        return inWorkshop.isPresent() ? inWorkshop : inTemporaryFile(entry);
    }

    private static Optional<Path> inTemporaryFile(String entry) {
        try {
            return append(Files.createTempFile("glintery-fault-", ".log"), entry);
        } catch (IOException e) {
            return Optional.empty();
        }
    }

    private static Optional<Path> append(Path file, String entry) {
        try {
            Files.writeString(file, entry, StandardOpenOption.CREATE, StandardOpenOption.APPEND);
            return Optional.of(file);
        } catch (IOException e) {
            return Optional.empty();
        }
    }

    private static String entry(Throwable fault, String what) {
        LogRecord entry = new LogRecord(Level.SEVERE, what);
        entry.setThrown(fault);
        return new SimpleFormatter().format(entry);
    }
}
