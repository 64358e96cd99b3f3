package org.glintery.stash.ui;

import static org.assertj.core.api.Assertions.assertThat;
import static org.glintery.stash.WorkshopInFolder.T1;
import static org.glintery.stash.WorkshopInFolder.T2;
import static org.glintery.stash.WorkshopInFolder.line;
import static org.glintery.stash.WorkshopInFolder.silent;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.glintery.api.ledger.Balance;
import org.glintery.api.stash.CardEntry;
import org.glintery.api.stash.LegendLine;
import org.glintery.api.stash.LineSupply;
import org.glintery.workbench.parts.DrillLook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Numbers in the sentences of the legend tab: none, one and many. */
class LegendWordsTest {

    private static LegendSheet sheet(long missing, LegendLine... lines) {
        List<LegendSheet.Row> rows = new ArrayList<>();
        for (LegendLine line : lines) {
            Optional<LineSupply> supply = rows.isEmpty()
                    ? Optional.of(new LineSupply(
                            0, line, Balance.ZERO, Balance.ZERO, Optional.of(new Balance(missing, 0, 0))))
                    : Optional.empty();
            rows.add(new LegendSheet.Row(
                    line, DrillLook.of(line.drill(), CardEntry.UNKNOWN), CardEntry.UNKNOWN, supply, false));
        }
        return new LegendSheet(rows, List.of(), T1, Optional.empty(), 200);
    }

    @Test
    void tellsWhatALegendComesTo() {
        assertThat(LegendSummary.of(sheet(0))).startsWith("No legend yet.");
        assertThat(LegendSummary.of(sheet(0, line("A", T1, 1, 1)))).isEqualTo("One line, 1 drill.");
        assertThat(LegendSummary.of(sheet(1, line("A", T1, 1_200, 0), line("B", T2, 40, 0))))
                .isEqualTo("2 lines, 1\u2009240 drills. 1 is missing.");
        assertThat(LegendSummary.of(sheet(1_200, line("A", T1, 1_200, 0))))
                .isEqualTo("One line, 1\u2009200 drills. 1\u2009200 are missing.");
    }

    @Test
    void saysThatNotEverythingIsKnown() {
        LegendLine open = silent("B", T2);
        LegendLine[] thousand = Stream.generate(() -> open).limit(1_000).toArray(LegendLine[]::new);

        assertThat(LegendSummary.of(sheet(0, thousand))).isEqualTo("1\u2009000 lines, 0 drills where it is known.");
    }

    @ParameterizedTest
    @CsvSource({
        "1, 'One row can''t be taken in. Nothing is, until it is right:'",
        "2, '2 rows can''t be taken in. Nothing is, until they are right:'",
        "1200, '1\u2009200 rows can''t be taken in. Nothing is, until they are right:'"
    })
    void tellsOfBadRows(int rows, String words) {
        assertThat(Bundle.LegendPreview_bad(rows, Balance.grouped(rows))).isEqualTo(words);
    }

    @ParameterizedTest
    @CsvSource({"0, Take in nothing", "1, Take in one line", "12, Take in 12 lines", "1000, Take in 1\u2009000 lines"})
    void offersToTakeLinesIn(int lines, String words) {
        assertThat(Bundle.LegendImport_take(lines, Balance.grouped(lines))).isEqualTo(words);
    }
}
