package org.glintery.stash.ui;

import org.glintery.api.ledger.Balance;
import org.openide.util.NbBundle.Messages;

/** What a legend comes to, in a sentence or three. Pure. */
final class LegendSummary {

    private LegendSummary() {}

    @Messages({
        "LegendSummary.none=No legend yet. Type its lines below, one for each Enter, stop whenever you like and go on later; or paste them from a spreadsheet, or read a file.",
        "# {0} - lines",
        "# {1} - lines in words",
        "# {2} - drills",
        "# {3} - drills in words",
        "LegendSummary.sum={0,choice,1#One line|1<{1} lines}, {2,choice,0#{3} drills|1#{3} drill|1<{3} drills}.",
        "# {0} - lines",
        "# {1} - lines in words",
        "# {2} - drills",
        "# {3} - drills in words",
        "LegendSummary.sumOpen={0,choice,1#One line|1<{1} lines}, {2,choice,0#{3} drills|1#{3} drill|1<{3} drills} where it is known.",
        "# {0} - drills",
        "# {1} - drills in words",
        "LegendSummary.missing={0,choice,1#{1} is|1<{1} are} missing.",
        "LegendSummary.repeated=A symbol stands on several lines; see the marked ones."
    })
    static String of(LegendSheet sheet) {
        if (sheet.rows().isEmpty()) {
            return Bundle.LegendSummary_none();
        }
        String text = sum(sheet);
        Balance missing = sheet.sumMissing();
        if (missing.count() > 0) {
            text += " " + Bundle.LegendSummary_missing(missing.count(), missing.words());
        }
        boolean repeated = sheet.rows().stream().anyMatch(LegendSheet.Row::repeated);
        return repeated ? text + " " + Bundle.LegendSummary_repeated() : text;
    }

    private static String sum(LegendSheet sheet) {
        int lines = sheet.rows().size();
        String linesWords = Balance.grouped(lines);
        long needed = sheet.sumNeeded();
        String neededWords = Balance.grouped(needed);
        return sheet.allNeedsKnown()
                ? Bundle.LegendSummary_sum(lines, linesWords, needed, neededWords)
                : Bundle.LegendSummary_sumOpen(lines, linesWords, needed, neededWords);
    }
}
