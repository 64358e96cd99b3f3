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
import org.openide.util.NbBundle.Messages;
import org.openide.util.lookup.ServiceProvider;

/** {@code workshop history}: the newest changes first. */
@ServiceProvider(service = Verb.class)
public final class WorkshopHistoryVerb extends WorkshopVerb {

    private static final int USUAL = 20;
    private static final DateTimeFormatter WHEN = DateTimeFormatter.ofPattern("yyyy-MM-dd HH:mm");

    /** The newest change first. */
    public record History(List<HistoryLine> changes) {}

    public WorkshopHistoryVerb() {
        super("history", History.class);
    }

    @Override
    @Messages("WorkshopHistoryVerb.summary=List the changes, the newest first")
    public String summary() {
        return Bundle.WorkshopHistoryVerb_summary();
    }

    @Override
    @Messages({"# {0} - how many", "WorkshopHistoryVerb.most=how many; {0} when not said"})
    public List<Param> params() {
        return List.of(Param.option("most", "N", Bundle.WorkshopHistoryVerb_most(String.valueOf(USUAL))));
    }

    @Override
    @Messages({
        "WorkshopHistoryVerb.noMost=--most takes a whole number from 1.",
        "WorkshopHistoryVerb.when=When",
        "WorkshopHistoryVerb.change=Change",
        "WorkshopHistoryVerb.none=Nothing was changed yet."
    })
    public VerbResult run(VerbCall call) {
        Optional<Integer> most = most(call.value("most"));
        if (most.isEmpty()) {
            return VerbResult.wrongUsage(Bundle.WorkshopHistoryVerb_noMost());
        }
        List<HistoryLine> changes = call.workshop().history(most.get());
        TextTable table = new TextTable(Bundle.WorkshopHistoryVerb_when(), Bundle.WorkshopHistoryVerb_change(), "");
        changes.forEach(line ->
                table.row(WHEN.format(line.recordedAt().atZone(call.clock().getZone())), line.sentence(), kind(line)));
        return VerbResult.said(
                new History(changes), changes.isEmpty() ? Bundle.WorkshopHistoryVerb_none() : table.toString());
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

    @Messages({"WorkshopHistoryVerb.undone=undone", "WorkshopHistoryVerb.doneAgain=done again"})
    private static String kind(HistoryLine line) {
        return switch (line.kind()) {
            case DONE -> "";
            case UNDO -> Bundle.WorkshopHistoryVerb_undone();
            case REDO -> Bundle.WorkshopHistoryVerb_doneAgain();
        };
    }
}
