package org.glintery.commands.workshop;

import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Optional;
import org.glintery.api.verb.Param;
import org.glintery.api.verb.TextTable;
import org.glintery.api.verb.Verb;
import org.glintery.api.verb.VerbCall;
import org.glintery.api.verb.VerbResult;
import org.glintery.api.workshop.HistoryLine;
import org.openide.util.lookup.ServiceProvider;

/** {@code workshop history}: the newest changes first. */
@ServiceProvider(service = Verb.class)
public final class WorkshopHistoryVerb extends WorkshopVerb {

    private static final int USUAL = 20;
    private static final DateTimeFormatter WHEN = DateTimeFormatter.ofPattern("yyyy-MM-dd HH:mm");

    /** The newest change first. */
    public record History(List<HistoryLine> changes) {}

    public WorkshopHistoryVerb() {
        super(
                "history",
                "List the changes, the newest first",
                History.class,
                Param.option("most", "N", "how many; " + USUAL + " when not said"));
    }

    @Override
    public VerbResult run(VerbCall call) {
        Optional<Integer> most = most(call.value("most"));
        if (most.isEmpty()) {
            return VerbResult.wrongUsage("--most takes a whole number from 1.");
        }
        List<HistoryLine> changes = call.workshop().history(most.get());
        TextTable table = new TextTable("When", "Change", "");
        changes.forEach(line ->
                table.row(WHEN.format(line.recordedAt().atZone(call.clock().getZone())), line.sentence(), kind(line)));
        return VerbResult.said(new History(changes), changes.isEmpty() ? "Nothing was changed yet." : table.toString());
    }

    private static Optional<Integer> most(Optional<String> written) {
        try {
            return Optional.of(
                            written.map(text -> Integer.parseInt(text.strip())).orElse(USUAL))
                    .filter(most -> most > 0);
        } catch (NumberFormatException e) {
            return Optional.empty();
        }
    }

    private static String kind(HistoryLine line) {
        return switch (line.kind()) {
            case DONE -> "";
            case UNDO -> "undone";
            case REDO -> "done again";
        };
    }
}
