package org.glintery.exchange.legend;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import org.glintery.api.ledger.Amount;
import org.glintery.api.ledger.AmountWords;
import org.glintery.exchange.csv.CsvRow;

/**
 * Makes out the columns of a table without a header: colours, shapes, bodies and coatings by their words, a symbol by its
 * shortness, what is needed by its figures. Where neither short symbols nor figures nor colours stand, it is no legend.
 */
final class ColumnGuess {
    private static final int LONGEST_SYMBOL = 3;
    private static final int LONGEST_CODE = 24;
    private static final AmountWords AMOUNTS = AmountWords.alone();

    private final List<CsvRow> rows;
    private final List<Optional<Column>> columns;

    private ColumnGuess(List<CsvRow> rows, int width) {
        this.rows = rows;
        this.columns = new ArrayList<>(Collections.nCopies(width, Optional.empty()));
    }

    /** One a column; none at all when they can't be made out. */
    static List<Optional<Column>> of(List<CsvRow> rows, int width) {
        var guess = new ColumnGuess(rows, width);
        if (width >= 2 && rows.size() >= 2 && guess.rowsAreAlike()) {
            guess.byWords();
            guess.byPlace();
        }
        return guess.columns;
    }

    private boolean rowsAreAlike() {
        long full = rows.stream()
                .filter(row -> row.cells().size() == columns.size())
                .count();
        return full * 5 >= rows.size() * 4L;
    }

    private void byWords() {
        first(
                Column.HEX,
                cell -> cell.strip().length() > 3 && ColourWords.hex(cell).isPresent() && !isFigure(cell));
        first(Column.SHAPE, cell -> ShapeWords.of(cell).isPresent());
        first(Column.COATING, cell -> DrillWords.coating(cell).isPresent());
        first(Column.BODY, cell -> DrillWords.body(cell).isPresent());
    }

    private void byPlace() {
        boolean symbols = first(Column.SYMBOL, cell -> cell.strip().length() <= LONGEST_SYMBOL);
        boolean figures = last(Column.NEEDED, ColumnGuess::isFigure);
        if (!symbols && !figures && !columns.contains(Optional.of(Column.HEX))) {
            Collections.fill(columns, Optional.empty());
            return;
        }
        first(Column.CODE, cell -> cell.strip().length() <= LONGEST_CODE);
        first(Column.NAME, cell -> !isFigure(cell));
    }

    private static boolean isFigure(String cell) {
        AmountWords.Said said = AMOUNTS.read(cell, Amount.MOST);
        return said.amount().known()
                || said.bags().isPresent()
                || said.fault().equals(Optional.of(AmountWords.Fault.TOO_LARGE));
    }

    private boolean first(Column meaning, Predicate<String> fits) {
        for (int place = 0; place < columns.size(); place++) {
            if (take(place, meaning, fits)) {
                return true;
            }
        }
        return false;
    }

    private boolean last(Column meaning, Predicate<String> fits) {
        for (int place = columns.size() - 1; place > 0; place--) {
            if (take(place, meaning, fits)) {
                return true;
            }
        }
        return false;
    }

    /** Blank cells fit everything; a blank column means nothing, and a symbol or code that is always the same neither. */
    private boolean take(int place, Column meaning, Predicate<String> fits) {
        List<String> cells = rows.stream()
                .map(row -> row.cell(place))
                .filter(cell -> !cell.isEmpty())
                .toList();
        boolean names = meaning == Column.SYMBOL || meaning == Column.CODE;
        boolean differ = cells.size() == 1 || new HashSet<>(cells).size() > 1;
        if (columns.get(place).isPresent()
                || cells.isEmpty()
                || names && !differ
                || !cells.stream().allMatch(fits)) {
            return false;
        }
        columns.set(place, Optional.of(meaning));
        return true;
    }
}
