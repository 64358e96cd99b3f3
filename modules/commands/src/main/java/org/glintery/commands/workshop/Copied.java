package org.glintery.commands.workshop;

import java.nio.file.Path;
import org.glintery.api.Result;
import org.glintery.api.verb.VerbCall;
import org.glintery.api.verb.VerbResult;
import org.glintery.api.workshop.Workshop.CopyReport;

/**
 * What a backup, an export, an import or a restore carried.
 *
 * @param file that was written or read
 */
public record Copied(String file, long documents, long movements, long blobs, long bytes) {

    /** Ends a verb with a copy or the refusal to make it. @param done in words, such as "Backed up to" */
    static VerbResult end(VerbCall call, String done, Path file, Result<CopyReport> result) {
        if (result instanceof Result.Refused<CopyReport> no) {
            return VerbResult.refused(no.refusal());
        }
        Result.Ok<CopyReport> ok = (Result.Ok<CopyReport>) result;
        ok.warnings().forEach(call::say);
        CopyReport report = ok.value();
        String text = "%s %s: %d documents, %d movements, %d pictures."
                .formatted(done, file, report.documents(), report.movements(), report.blobs());
        return VerbResult.said(
                new Copied(file.toString(), report.documents(), report.movements(), report.blobs(), report.bytes()),
                text);
    }
}
