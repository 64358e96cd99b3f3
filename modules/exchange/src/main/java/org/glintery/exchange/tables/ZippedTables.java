package org.glintery.exchange.tables;

import java.nio.file.Path;
import org.glintery.api.JsonCodec;
import org.glintery.api.OffTheEventThread;
import org.glintery.api.Result;
import org.glintery.api.disk.NewFile;
import org.glintery.api.exchange.TableFiles;
import org.glintery.api.workshop.View;
import org.glintery.api.workshop.Workshop;
import org.glintery.api.workshop.Workshop.CopyReport;
import org.openide.util.NbBundle.Messages;

/** Carries a workshop out and in as one zip of tables. Any thread but the event thread. */
final class ZippedTables implements TableFiles {
    private static final String CHANGED = "changed-meanwhile";
    private static final int MOST_TRIES = 3;

    private final Workshop workshop;
    private final JsonCodec codec;

    ZippedTables(Workshop workshop, JsonCodec codec) {
        this.workshop = workshop;
        this.codec = codec;
    }

    /** A maker may go on working while this writes: what does not belong to one moment is written anew. */
    @Override
    public Result<CopyReport> exportTables(Path zip) {
        OffTheEventThread.check();
        Result<CopyReport> result = write(zip);
        for (int tries = 1; tries < MOST_TRIES && isOverrun(result); tries++) {
            result = write(zip);
        }
        return result;
    }

    private static boolean isOverrun(Result<CopyReport> result) {
        return result instanceof Result.Refused<CopyReport> refused
                && refused.refusal().code().equals(CHANGED);
    }

    @Messages(
            "ZippedTables.changed=The workshop was changed again and again while it was written. Nothing was kept; try again in a quiet moment.")
    private Result<CopyReport> write(Path zip) {
        View view = workshop.view();
        Result<CopyReport> written = NewFile.write(zip, out -> {
            TableWriting.Counts counts = new TableWriting(workshop, view, codec, out).write();
            return workshop.view().revision() == view.revision()
                    ? Result.ok(
                            new CopyReport(zip, counts.documents(), counts.movements(), counts.blobs(), 0),
                            counts.warnings())
                    : Result.refused(CHANGED, Bundle.ZippedTables_changed());
        });
        return written.then(report -> Result.ok(new CopyReport(
                zip,
                report.documents(),
                report.movements(),
                report.blobs(),
                zip.toFile().length())));
    }

    @Override
    public Result<CopyReport> importTables(Path zip) {
        OffTheEventThread.check();
        return new TableImport(workshop, codec).readFile(zip);
    }
}
