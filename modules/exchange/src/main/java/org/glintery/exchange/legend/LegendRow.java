package org.glintery.exchange.legend;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.glintery.api.exchange.LegendReader.Assumed;
import org.glintery.api.ledger.Amount;
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
    "row-no-name=there is neither a symbol nor a code",
    "row-unprintable=it holds signs that can''t be printed",
    "# {0} - column",
    "# {1} - what is wrong",
    "row-figure={0}: {1}",
    "# {0} - what stands there",
    "row-colour=''{0}'' is not a colour such as #3c6e71",
    "# {0} - what stands there",
    "row-size=''{0}'' is not a size in millimetres",
    "# {0} - what stands there",
    "# {1} - column",
    "row-word=''{0}'' is not a {1} we know"
})
record LegendRow(Optional<LegendLine> line, CardEntry entry, List<String> faults) {
    private static final long MOST_BAGS = 10_000;

    /**
     * @param cells by meaning, blank where the row does not say
     * @param extras further cells that are not blank, by their header
     */
    static LegendRow of(Map<Column, String> cells, Map<String, String> extras, Figures figures, Assumed assumed) {
        return new Maker(cells, figures).make(extras, assumed);
    }

    /** Collects faults while the parts of a line are made. */
    private static final class Maker {
        private final Map<Column, String> cells;
        private final Figures figures;
        private final List<String> faults = new ArrayList<>();

        Maker(Map<Column, String> cells, Figures figures) {
            this.cells = cells;
            this.figures = figures;
        }

        LegendRow make(Map<String, String> extras, Assumed assumed) {
            String symbol = cell(Column.SYMBOL);
            String code = cell(Column.CODE);
            Optional<String> name = Optional.of(cell(Column.NAME)).filter(text -> !text.isEmpty());
            if (symbol.isEmpty() && code.isEmpty()) {
                faults.add(Bundle.row_no_name());
            }
            if (cells.values().stream().anyMatch(Signs::areUnprintable)
                    || extras.values().stream().anyMatch(Signs::areUnprintable)) {
                faults.add(Bundle.row_unprintable());
            }
            Shape shape =
                    word(Column.SHAPE, DrillWords::shape).or(assumed::shape).orElse(Shape.SQUARE);
            int size = size(shape);
            Body body = word(Column.BODY, DrillWords::body).orElse(Body.RESIN);
            Coating coating = word(Column.COATING, DrillWords::coating).orElse(Coating.NONE);
            Optional<Long> needed = figure(Column.NEEDED, Amount.MOST);
            Optional<Long> supplied = figure(Column.SUPPLIED, Amount.MOST);
            Optional<Integer> bags = figure(Column.BAGS, MOST_BAGS).map(Long::intValue);
            var entry = new CardEntry(name, colour(), false);
            if (!faults.isEmpty()) {
                return new LegendRow(Optional.empty(), entry, List.copyOf(faults));
            }
            // A legend that prints no codes still tells its drills apart: by their names, else by their symbols.
            String known = code.isEmpty() ? name.orElse(symbol) : code;
            var drill = new Drill(shape, size, body, coating, Optional.empty(), assumed.card(), known);
            Amount amount = supplied.map(Amount::counted).orElse(Amount.unknown());
            var line = new LegendLine(symbol.isEmpty() ? code : symbol, drill, needed, amount, bags, extras);
            return new LegendRow(Optional.of(line), entry, List.of());
        }

        private String cell(Column column) {
            return cells.getOrDefault(column, "");
        }

        private <E> Optional<E> word(Column column, Function<String, Optional<E>> meaning) {
            String text = cell(column);
            Optional<E> meant = meaning.apply(text);
            if (!text.isEmpty() && meant.isEmpty()) {
                faults.add(Bundle.row_word(Signs.shortened(text), column.words()));
            }
            return meant;
        }

        private Optional<Long> figure(Column column, long most) {
            Figures.Read read = figures.whole(cell(column), most);
            read.fault().ifPresent(fault -> faults.add(Bundle.row_figure(column.words(), fault)));
            return read.value().isPresent() ? Optional.of(read.value().getAsLong()) : Optional.empty();
        }

        private Optional<String> colour() {
            String text = cell(Column.HEX);
            Optional<String> hex = ColourWords.hex(text);
            if (!text.isEmpty() && hex.isEmpty()) {
                faults.add(Bundle.row_colour(Signs.shortened(text)));
            }
            return hex;
        }

        private int size(Shape shape) {
            String text = cell(Column.SIZE).replaceFirst("(?i)\\s*mm$", "").replace(',', '.');
            if (text.isEmpty()) {
                return Drill.usualSizeHundredths(shape);
            }
            if (text.matches("\\d{1,3}(\\.\\d{1,2}0*)?") && Math.round(Double.parseDouble(text) * 100) > 0) {
                return (int) Math.round(Double.parseDouble(text) * 100);
            }
            faults.add(Bundle.row_size(Signs.shortened(cell(Column.SIZE))));
            return Drill.usualSizeHundredths(shape);
        }
    }
}
