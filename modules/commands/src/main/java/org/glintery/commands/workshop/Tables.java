package org.glintery.commands.workshop;

import java.nio.file.Path;
import java.util.function.BiFunction;
import org.glintery.api.Result;
import org.glintery.api.exchange.TableFiles;
import org.glintery.api.verb.Param;
import org.glintery.api.verb.VerbCall;
import org.glintery.api.verb.VerbResult;
import org.glintery.api.workshop.Workshop;
import org.glintery.api.workshop.Workshop.CopyReport;
import org.openide.util.NbBundle.Messages;

/** Which form a workshop is carried in: one JSON file, or a zip of tables. */
final class Tables {

    private static final String FILE = "file";
    private static final String TABLES = "tables";

    private Tables() {}

    static Param json(String help) {
        return Param.optionalPositional(FILE, "FILE.json", help);
    }

    static Param zip(String help) {
        return Param.option(TABLES, "FILE.zip", help);
    }

    /** Carries the workshop in the form that was asked for. @param done says so, of the file and how much it is */
    @Messages({
        "Tables.either=Name either FILE.json or --tables FILE.zip.",
        "Tables.noExchange=Tables need the exchange feature, which is switched off."
    })
    static VerbResult carry(
            VerbCall call,
            BiFunction<Path, String, String> done,
            BiFunction<Workshop, Path, Result<CopyReport>> json,
            BiFunction<TableFiles, Path, Result<CopyReport>> tables) {
        if (call.value(FILE).isPresent() == call.value(TABLES).isPresent()) {
            return VerbResult.wrongUsage(Bundle.Tables_either());
        }
        if (call.value(FILE).isPresent()) {
            Path file = call.path(call.need(FILE));
            return Copied.end(call, done, file, json.apply(call.workshop(), file));
        }
        Path zip = call.path(call.need(TABLES));
        return call.workshop()
                .find(TableFiles.class)
                .map(files -> Copied.end(call, done, zip, tables.apply(files, zip)))
                .orElseGet(() -> VerbResult.wrongUsage(Bundle.Tables_noExchange()));
    }
}
