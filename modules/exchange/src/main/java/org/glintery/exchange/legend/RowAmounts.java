package org.glintery.exchange.legend;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.glintery.api.ledger.Amount;
import org.glintery.api.ledger.AmountWords;
import org.glintery.api.ledger.AmountWords.Fault;
import org.glintery.api.ledger.AmountWords.Said;
import org.glintery.api.ledger.Balance;
import org.openide.util.NbBundle.Messages;

/**
 * What a row says of needed, supplied and bags. Bags are what was supplied, in whichever of the three columns they stand:
 * "2 x 200" under a heading such as "quantity" is no need.
 *
 * @param notes cells that say more than could be taken from them, by their header
 */
@Messages({
    "# {0} - column",
    "# {1} - what stands there",
    "RowAmounts.negative={0}: ''{1}'' is below zero",
    "# {0} - column",
    "# {1} - what stands there",
    "RowAmounts.notWhole={0}: ''{1}'' is not a whole number",
    "# {0} - column",
    "# {1} - what stands there",
    "# {2} - most",
    "RowAmounts.tooLarge={0}: ''{1}'' is more than {2}",
    "# {0} - some number of bags",
    "# {1} - another",
    "RowAmounts.twoBags=one column says {0} bags and another {1}"
})
record RowAmounts(
        Optional<Long> needed,
        Amount supplied,
        Optional<Integer> bags,
        Map<String, String> notes,
        List<String> faults) {

    static RowAmounts of(LegendRow.Cells cells, Columns columns, AmountWords words) {
        return new Maker(cells, columns).make(words);
    }

    private static final class Maker {
        private final LegendRow.Cells cells;
        private final Columns columns;
        private final Map<String, String> notes = new LinkedHashMap<>();
        private final List<String> faults = new ArrayList<>();

        Maker(LegendRow.Cells cells, Columns columns) {
            this.cells = cells;
            this.columns = columns;
        }

        RowAmounts make(AmountWords words) {
            Said needed = read(Column.NEEDED, words, Amount.MOST);
            Said supplied = read(Column.SUPPLIED, words, Amount.MOST);
            Said bags = bags(words);
            Optional<Integer> count = same(bags.bags(), supplied.bags(), needed.bags());
            Amount amount = supplied.amount();
            if (!amount.known() && !supplied.uncountable()) {
                amount = bags.amount();
            }
            if (!amount.known() && needed.bags().isPresent()) {
                amount = needed.amount();
            }
            Optional<Long> need =
                    needed.amount().count().filter(known -> needed.bags().isEmpty());
            if (need.isPresent() && needed.amount().basis() != Amount.Basis.COUNTED) {
                note(Column.NEEDED);
            }
            return new RowAmounts(need, amount, count, notes, List.copyOf(faults));
        }

        /** A bare number in the column of bags counts bags, and its heading may say what one of them holds. */
        private Said bags(AmountWords words) {
            Said said = read(Column.BAGS, words, Amount.MOST);
            Optional<Long> bare =
                    said.amount().count().filter(known -> said.bags().isEmpty());
            if (bare.isEmpty() || AmountWords.tellPartOfBag(cells.cell(Column.BAGS))) {
                return said;
            }
            if (bare.get() > Amount.MOST_BAGS) {
                fault(Column.BAGS, Fault.TOO_LARGE, Amount.MOST_BAGS);
                return said;
            }
            if (said.amount().basis() != Amount.Basis.COUNTED) {
                note(Column.BAGS);
            }
            int count = bare.get().intValue();
            Amount held = columns.bagSize()
                    .map(size -> Amount.inBags((long) count * size, count))
                    .orElse(Amount.unknown());
            return new Said(held, Optional.of(count), false, Optional.empty());
        }

        private Said read(Column column, AmountWords words, long most) {
            Said said = words.read(cells.cell(column), most);
            said.fault().ifPresent(fault -> fault(column, fault, most));
            boolean partOfBag = AmountWords.tellPartOfBag(cells.cell(column));
            if ((said.uncountable() || partOfBag) && column == Column.NEEDED) {
                // what came may be "some", but a chart asks for a number
                fault(column, Fault.NOT_WHOLE, most);
            } else if (said.uncountable() || partOfBag) {
                note(column);
            }
            return said;
        }

        @SafeVarargs
        private Optional<Integer> same(Optional<Integer>... told) {
            Optional<Integer> first = Optional.empty();
            for (Optional<Integer> one : told) {
                if (first.isPresent() && one.isPresent() && !first.equals(one)) {
                    faults.add(Bundle.RowAmounts_twoBags(Balance.grouped(first.get()), Balance.grouped(one.get())));
                }
                first = first.or(() -> one);
            }
            return first;
        }

        private void note(Column column) {
            notes.put(columns.title(column), cells.cell(column));
        }

        private void fault(Column column, Fault fault, long most) {
            String shown = Signs.shortened(cells.cell(column).strip());
            faults.add(
                    switch (fault) {
                        case BELOW_ZERO -> Bundle.RowAmounts_negative(column.words(), shown);
                        case NOT_WHOLE -> Bundle.RowAmounts_notWhole(column.words(), shown);
                        case TOO_LARGE -> Bundle.RowAmounts_tooLarge(column.words(), shown, Balance.grouped(most));
                    });
        }
    }
}
