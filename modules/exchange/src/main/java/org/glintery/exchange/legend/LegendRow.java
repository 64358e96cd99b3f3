package org.glintery.exchange.legend;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.glintery.api.exchange.LegendReader.Assumed;
import org.glintery.api.ledger.AmountWords;
import org.glintery.api.ledger.Body;
import org.glintery.api.ledger.Coating;
import org.glintery.api.ledger.Drill;
import org.glintery.api.ledger.Shape;
import org.glintery.api.stash.CardEntry;
import org.glintery.api.stash.LegendLine;
import org.openide.util.NbBundle.Messages;

/**
 * One row understood: a line with what it says of its code, or every reason why it can't be taken in.
 *
 * @param line there only without faults
 */
@Messages({
    "LegendRow.noName=there is neither a symbol nor a code",
    "LegendRow.unprintable=it holds signs that can't be printed",
    "# {0} - what stands there",
    "LegendRow.colour=''{0}'' is not a colour such as #3c6e71",
    "# {0} - what stands there",
    "LegendRow.size=''{0}'' is not a size in millimetres",
    "# {0} - what the shape says",
    "# {1} - what the size says",
    "LegendRow.twoSizes=the shape says {0} and the size {1}",
    "# {0} - what stands there",
    "# {1} - column",
    "LegendRow.word=''{0}'' is not a {1} we know"
})
record LegendRow(Optional<LegendLine> line, CardEntry entry, List<String> faults) {

    /** What one row holds. @param extras further cells that are not blank, by their header */
    record Cells(Map<Column, String> byMeaning, Map<String, String> extras) {
        /** Blank where the row does not say. */
        String cell(Column column) {
            return byMeaning.getOrDefault(column, "");
        }

        /** Blank also where a dash or "n/a" stands: a symbol alone may be a dash. */
        String said(Column column) {
            String text = cell(column);
            boolean isName = column == Column.CODE || column == Column.NAME;
            boolean silent = isName ? text.matches("[-–—?]*") : AmountWords.areSilent(text);
            return silent ? "" : text;
        }
    }

    static LegendRow of(Cells cells, Columns columns, AmountWords words, Assumed assumed) {
        return new Maker(cells, columns).make(words, assumed);
    }

    /** Collects faults while the parts of a line are made. */
    private static final class Maker {
        private final Cells cells;
        private final Columns columns;
        private final List<String> faults = new ArrayList<>();

        Maker(Cells cells, Columns columns) {
            this.cells = cells;
            this.columns = columns;
        }

        LegendRow make(AmountWords words, Assumed assumed) {
            String symbol = cells.cell(Column.SYMBOL);
            String code = cells.said(Column.CODE);
            Optional<String> name = Optional.of(cells.said(Column.NAME)).filter(text -> !text.isEmpty());
            if (symbol.isEmpty() && code.isEmpty()) {
                faults.add(Bundle.LegendRow_noName());
            }
            if (cells.byMeaning().values().stream().anyMatch(Signs::areUnprintable)
                    || cells.extras().values().stream().anyMatch(Signs::areUnprintable)) {
                faults.add(Bundle.LegendRow_unprintable());
            }
            // A legend that prints no codes still tells its drills apart: by their names, else by their symbols.
            Optional<Drill> drill = drill(assumed, code.isEmpty() ? name.orElse(symbol) : code);
            var entry = new CardEntry(name, colour(), false);
            RowAmounts amounts = RowAmounts.of(cells, columns, words);
            faults.addAll(amounts.faults());
            if (!faults.isEmpty()) {
                return new LegendRow(Optional.empty(), entry, List.copyOf(faults));
            }
            Map<String, String> notes = new LinkedHashMap<>(cells.extras());
            notes.putAll(amounts.notes());
            var line = new LegendLine(
                    symbol.isEmpty() ? code : symbol,
                    drill.orElseThrow(),
                    amounts.needed(),
                    amounts.supplied(),
                    amounts.bags(),
                    notes);
            return new LegendRow(Optional.of(line), entry, List.of());
        }

        private Optional<Drill> drill(Assumed assumed, String known) {
            Optional<ShapeWords> told = word(Column.SHAPE, ShapeWords::of);
            Shape shape = told.map(ShapeWords::shape).or(assumed::shape).orElse(Shape.SQUARE);
            Optional<Integer> size = size(told.flatMap(ShapeWords::sizeHundredths));
            Optional<Body> body = word(Column.BODY, DrillWords::body);
            Optional<Coating> coating = word(Column.COATING, DrillWords::coating);
            return faults.isEmpty()
                    ? Optional.of(new Drill(
                            shape,
                            size.orElse(Drill.usualSizeHundredths(shape)),
                            body.orElse(Body.RESIN),
                            coating.orElse(Coating.NONE),
                            told.flatMap(ShapeWords::outline),
                            assumed.card(),
                            known))
                    : Optional.empty();
        }

        private <E> Optional<E> word(Column column, Function<String, Optional<E>> meaning) {
            String text = cells.said(column);
            Optional<E> meant = meaning.apply(text);
            if (!text.isEmpty() && meant.isEmpty()) {
                faults.add(Bundle.LegendRow_word(Signs.shortened(text), column.words()));
            }
            return meant;
        }

        private Optional<String> colour() {
            String text = cells.said(Column.HEX);
            Optional<String> hex = ColourWords.hex(text);
            if (!text.isEmpty() && hex.isEmpty()) {
                faults.add(Bundle.LegendRow_colour(Signs.shortened(text)));
            }
            return hex;
        }

        private Optional<Integer> size(Optional<Integer> byShape) {
            String text = cells.said(Column.SIZE);
            Optional<Integer> size = DrillWords.sizeHundredths(text);
            if (!text.isEmpty() && size.isEmpty()) {
                faults.add(Bundle.LegendRow_size(Signs.shortened(text)));
            }
            if (size.isPresent() && byShape.isPresent() && !size.equals(byShape)) {
                faults.add(Bundle.LegendRow_twoSizes(Signs.shortened(cells.cell(Column.SHAPE)), Signs.shortened(text)));
            }
            return size.or(() -> byShape);
        }
    }
}
