package org.glintery.exchange.legend;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.glintery.api.exchange.LegendReader.Assumed;
import org.glintery.api.exchange.LegendReader.BadRow;
import org.glintery.api.ledger.AmountWords;
import org.glintery.api.stash.CardEntry;
import org.glintery.api.stash.LegendLine;
import org.glintery.exchange.csv.CsvRow;

/** The rows of a table taken for legend lines, in their order, under columns whose meaning is known. */
final class LegendTable {
    private static final Set<Column> NUMBERS = EnumSet.of(Column.NEEDED, Column.SUPPLIED, Column.BAGS);
    /** How spreadsheets are made to keep the zeros before a code. */
    private static final Pattern KEPT_AS_TEXT = Pattern.compile("=\"(.*)\"");

    private final Columns columns;
    private final Assumed assumed;
    private final AmountWords words;
    private final List<LegendLine> lines = new ArrayList<>();
    private final Map<String, CardEntry> entries = new LinkedHashMap<>();
    private final List<BadRow> badRows = new ArrayList<>();
    private final DoubtfulNumbers doubtful = new DoubtfulNumbers();
    private final RoughWords rough;

    LegendTable(Columns columns, List<CsvRow> rows, Assumed assumed) {
        this.columns = columns;
        this.assumed = assumed;
        List<CsvRow> own = rows.subList(columns.headerRows(), rows.size());
        words = AmountWords.asIn(own.stream()
                        .flatMap(row -> byMeaning(row).entrySet().stream())
                        .filter(cell -> NUMBERS.contains(cell.getKey()))
                        .map(Map.Entry::getValue)
                        .toList())
                .inBagsOf(assumed.drillsPerBag());
        rough = new RoughWords(words);
        own.forEach(this::take);
    }

    List<LegendLine> lines() {
        return lines;
    }

    /** What is said of each code; where lines differ, the first that says something. */
    Map<String, CardEntry> entries() {
        return entries;
    }

    List<BadRow> badRows() {
        return badRows;
    }

    /** Plain sentences about what was taken in nevertheless. */
    List<String> warnings() {
        List<String> warnings = new ArrayList<>(columns.missing());
        warnings.addAll(RepeatedSymbols.warnings(lines));
        warnings.addAll(doubtful.warnings());
        warnings.addAll(rough.warnings());
        return warnings;
    }

    private void take(CsvRow row) {
        Map<Column, String> cells = byMeaning(row);
        LegendRow read = LegendRow.of(new LegendRow.Cells(cells, extras(row)), columns, words, assumed);
        if (read.line().isEmpty()) {
            badRows.add(new BadRow(row.line(), String.join("; ", read.faults())));
            return;
        }
        lines.add(read.line().get());
        NUMBERS.stream().map(column -> cells.getOrDefault(column, "")).forEach(cell -> {
            words.smallerReading(cell).ifPresent(smaller -> doubtful.add(row.line(), cell, smaller));
            rough.look(row.line(), cell);
        });
        entries.merge(read.line().get().drill().code(), read.entry(), LegendTable::fuller);
    }

    private static CardEntry fuller(CardEntry first, CardEntry second) {
        return new CardEntry(first.name().or(second::name), first.hex().or(second::hex), false);
    }

    private Map<Column, String> byMeaning(CsvRow row) {
        Map<Column, String> cells = new EnumMap<>(Column.class);
        for (int place = 0; place < row.cells().size(); place++) {
            Optional<Column> meaning = columns.meaning(place);
            if (meaning.isPresent()) {
                cells.put(meaning.get(), text(row.cell(place)));
            }
        }
        return cells;
    }

    private Map<String, String> extras(CsvRow row) {
        Map<String, String> extras = new LinkedHashMap<>();
        for (int place = 0; place < row.cells().size(); place++) {
            if (columns.meaning(place).isEmpty() && !row.cell(place).isEmpty()) {
                extras.put(columns.titles().get(place), text(row.cell(place)));
            }
        }
        return extras;
    }

    private static String text(String cell) {
        Matcher kept = KEPT_AS_TEXT.matcher(cell);
        return kept.matches() ? kept.group(1).strip() : cell;
    }
}
