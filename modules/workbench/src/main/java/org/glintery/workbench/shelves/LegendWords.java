package org.glintery.workbench.shelves;

import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.glintery.api.exchange.LegendReader;
import org.openide.util.NbBundle.Messages;

/** Says what was understood of a legend file. Pure. */
final class LegendWords {
    private static final int SHOWN = 6;

    private LegendWords() {}

    @Messages({
        "# {0} - lines",
        "# {1} - columns",
        "LegendWords.understood={0} lines understood. {1}",
        "# {0} - rows",
        "LegendWords.bad=Nothing is taken in until these rows are right: {0}",
        "# {0} - line number",
        "# {1} - reason",
        "LegendWords.row=line {0}, {1}",
        "# {0} - header in the file",
        "# {1} - what it was taken for",
        "LegendWords.column={0} is {1}"
    })
    static String understood(LegendReader.Reading reading) {
        if (!reading.badRows().isEmpty()) {
            String rows = reading.badRows().stream()
                    .limit(SHOWN)
                    .map(row -> Bundle.LegendWords_row(String.valueOf(row.line()), row.reason()))
                    .collect(Collectors.joining("; "));
            return Bundle.LegendWords_bad(rows);
        }
        String columns = reading.columns().entrySet().stream()
                .map(e -> Bundle.LegendWords_column(e.getKey(), e.getValue()))
                .collect(Collectors.joining(", ", "", "."));
        return Stream.concat(
                        Stream.of(Bundle.LegendWords_understood(
                                String.valueOf(reading.lines().size()), columns)),
                        reading.warnings().stream().limit(SHOWN))
                .collect(Collectors.joining("\n"));
    }
}
