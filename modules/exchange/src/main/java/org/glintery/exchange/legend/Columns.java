package org.glintery.exchange.legend;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.glintery.exchange.csv.CsvRow;
import org.openide.util.NbBundle.Messages;

/**
 * What the columns of a table mean. Each meaning is given once; what has none is a note.
 *
 * @param titles one a column, no two alike
 * @param headerRows how many rows come before the legend's own
 */
@Messages({"# {0} - which column, from 1", "Columns.title=column {0}", "Columns.note=a note"})
record Columns(List<Optional<Column>> meanings, List<String> titles, int headerRows) {
    private static final int MOST_ROWS_ABOVE = 10;

    /** By the header, which may have a title above it; without one by what stands in the columns. */
    static Columns of(List<CsvRow> rows) {
        int most = Math.min(rows.size(), MOST_ROWS_ABOVE);
        for (int place = 0; place < most; place++) {
            List<String> header = rows.get(place).cells();
            List<Optional<Column>> meanings = meantBy(header);
            long meant = meanings.stream().flatMap(Optional::stream).count();
            if (meant >= 2 || meant == 1 && place == 0 && looksLikeWords(header)) {
                return new Columns(meanings, titles(header, widest(rows)), place + 1);
            }
        }
        List<Optional<Column>> guessed = ColumnGuess.of(rows, widest(rows));
        return new Columns(guessed, titles(List.of(), widest(rows)), 0);
    }

    /** What a heading such as "bags of 200" says that one bag holds. */
    Optional<Integer> bagSize() {
        return meanings.contains(Optional.of(Column.BAGS)) ? Column.bagSize(title(Column.BAGS)) : Optional.empty();
    }

    /** The title of the column that has this meaning; it must be there. */
    String title(Column meaning) {
        return titles.get(meanings.indexOf(Optional.of(meaning)));
    }

    boolean nameALine() {
        return meanings.contains(Optional.of(Column.SYMBOL)) || meanings.contains(Optional.of(Column.CODE));
    }

    /** What a legend usually says and no heading was understood as, while there are headings that were not understood. */
    @Messages({
        "Columns.noCode=No heading was understood as the code of the drills, so their names or symbols stand for it.",
        "Columns.noAmount=No heading was understood as how many drills are needed or supplied, so that stays unknown.",
        "# {0} - what is missing",
        "# {1} - headings",
        "Columns.missing={0} Taken as notes: {1}. Name the column in the file if it is among them."
    })
    List<String> missing() {
        List<String> notes = IntStream.range(0, headerRows == 0 ? 0 : titles.size())
                .filter(place -> meaning(place).isEmpty())
                .mapToObj(titles::get)
                .toList();
        List<String> missing = new ArrayList<>();
        if (!notes.isEmpty() && !meanings.contains(Optional.of(Column.CODE))) {
            missing.add(Bundle.Columns_missing(Bundle.Columns_noCode(), String.join(", ", notes)));
        }
        boolean amounts = Stream.of(Column.NEEDED, Column.SUPPLIED, Column.BAGS)
                .anyMatch(amount -> meanings.contains(Optional.of(amount)));
        if (!notes.isEmpty() && !amounts) {
            missing.add(Bundle.Columns_missing(Bundle.Columns_noAmount(), String.join(", ", notes)));
        }
        return missing;
    }

    Optional<Column> meaning(int place) {
        return place < meanings.size() ? meanings.get(place) : Optional.empty();
    }

    /** Title to meaning in words, for those columns that have a title of their own. */
    Map<String, String> told() {
        Map<String, String> told = new LinkedHashMap<>();
        for (int place = 0; place < titles.size(); place++) {
            told.put(titles.get(place), meaning(place).map(Column::words).orElse(Bundle.Columns_note()));
        }
        return told;
    }

    private static int widest(List<CsvRow> rows) {
        return rows.stream().mapToInt(row -> row.cells().size()).max().orElse(0);
    }

    private static boolean looksLikeWords(List<String> header) {
        return header.stream()
                .noneMatch(cell -> cell.strip().matches("[\\d.,]+")
                        || ColourWords.hex(cell).isPresent());
    }

    /** What is surely meant goes before what is perhaps meant, the first column before the others. */
    private static List<Optional<Column>> meantBy(List<String> header) {
        List<Optional<Column>> meanings = new ArrayList<>(Collections.nCopies(header.size(), Optional.empty()));
        for (Function<String, List<Column>> meant :
                List.<Function<String, List<Column>>>of(Column::surelyMeantBy, Column::perhapsMeantBy)) {
            for (int place = 0; place < header.size(); place++) {
                if (meanings.get(place).isEmpty()) {
                    Optional<Column> free = meant.apply(header.get(place)).stream()
                            .filter(column -> !meanings.contains(Optional.of(column)))
                            .findFirst();
                    meanings.set(place, free);
                }
            }
        }
        return meanings;
    }

    private static List<String> titles(List<String> header, int width) {
        List<String> titles = new ArrayList<>();
        Set<String> taken = new HashSet<>();
        for (int place = 0; place < Math.max(width, header.size()); place++) {
            String said = place < header.size() ? header.get(place).strip() : "";
            String told = said.isEmpty() ? Bundle.Columns_title(String.valueOf(place + 1)) : said;
            String title = told;
            for (int again = 2; !taken.add(title); again++) {
                title = told + " " + again;
            }
            titles.add(title);
        }
        return titles;
    }
}
