package org.glintery.commands.workshop;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.function.BiFunction;
import org.glintery.api.Result;
import org.glintery.api.ledger.Balance;
import org.glintery.api.verb.VerbCall;
import org.glintery.api.verb.VerbResult;
import org.glintery.api.workshop.Workshop.CopyReport;
import org.openide.util.NbBundle.Messages;

/**
 * What a backup, an export, an import or a restore carried.
 *
 * @param file that was written or read
 */
public record Copied(String file, long documents, long movements, long blobs, long bytes) {

    /** What is said when what is to be read isn't there; empty when it is. */
    @Messages({"# {0} - file", "Copied.noFile=There is no file {0}. Nothing was changed."})
    static Optional<VerbResult> missing(Path file) {
        return Files.exists(file)
                ? Optional.empty()
                : Optional.of(VerbResult.refused("no-file", Bundle.Copied_noFile(file)));
    }

    /** Ends a verb with a copy or the refusal to make it. @param done says so, of the file and how much it is */
    static VerbResult end(VerbCall call, BiFunction<Path, String, String> done, Path file, Result<CopyReport> result) {
        if (result instanceof Result.Refused<CopyReport> no) {
            return VerbResult.refused(no.refusal());
        }
        Result.Ok<CopyReport> ok = (Result.Ok<CopyReport>) result;
        ok.warnings().forEach(call::say);
        CopyReport report = ok.value();
        String text = done.apply(file, counts(report.documents(), report.movements(), report.blobs()));
        return VerbResult.said(
                new Copied(file.toString(), report.documents(), report.movements(), report.blobs(), report.bytes()),
                text);
    }

    /** "1 document, 12 movements, 0 pictures". */
    @Messages({
        "# {0} - how many documents",
        "# {1} - documents in figures",
        "# {2} - how many movements",
        "# {3} - movements in figures",
        "# {4} - how many pictures",
        "# {5} - pictures in figures",
        "Copied.counts={0,choice,0#0 documents|1#1 document|1<{1} documents}, {2,choice,0#0 movements|1#1 movement|1<{3} movements}, {4,choice,0#0 pictures|1#1 picture|1<{5} pictures}"
    })
    static String counts(long documents, long movements, long pictures) {
        return Bundle.Copied_counts(
                documents,
                Balance.grouped(documents),
                movements,
                Balance.grouped(movements),
                pictures,
                Balance.grouped(pictures));
    }
}
