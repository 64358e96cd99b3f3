package org.glintery.planning.transport;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.glintery.planning.transport.TransportFault.Kind;
import org.junit.jupiter.api.Test;

/** Each fault that is planted in a good plan is found. */
class TransportCheckTest {

    /** Two rows want the first column, which holds five of their eight. */
    private static final TransportTask TASK =
            new TransportTask(new int[] {4, 4}, new int[] {5, 9}, (row, column) -> column == 0 ? 1 : 3 + row);

    private static final TransportPlan GOOD =
            plan(new int[] {0, 0, 1}, new int[] {0, 1, 0}, new int[] {1, 3, 4}, new double[] {2, 0}, 14, 14);

    private static TransportPlan plan(
            int[] rows, int[] columns, int[] amounts, double[] prices, double cost, double bound) {
        return new TransportPlan(rows, columns, amounts, prices, cost, bound);
    }

    private static void isFound(TransportPlan plan, Kind kind, int place) {
        assertThat(TransportCheck.fault(TASK, plan)).hasValueSatisfying(fault -> {
            assertThat(fault.kind()).isEqualTo(kind);
            assertThat(fault.place()).isEqualTo(place);
        });
    }

    @Test
    void findsNothingInAGoodPlan() {
        assertThat(TransportCheck.fault(TASK, GOOD)).isEmpty();
        assertThat(GOOD.gap()).isZero();
    }

    @Test
    void worksOutCostAndBoundItself_whateverIsClaimed() {
        TransportPlan boasting =
                plan(new int[] {0, 1, 1}, new int[] {0, 0, 1}, new int[] {4, 1, 3}, GOOD.prices(), 1, 1);
        TransportPlan proven = TransportCheck.proven(TASK, boasting);
        assertThat(proven.cost()).isEqualTo(17);
        assertThat(proven.bound()).isEqualTo(14);
        assertThat(TransportCheck.fault(TASK, proven)).isEmpty();
        TransportPlan tooMuch = plan(new int[] {0, 1}, new int[] {0, 0}, new int[] {4, 4}, GOOD.prices(), 8, 8);
        assertThatThrownBy(() -> TransportCheck.proven(TASK, tooMuch))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("COLUMN");
    }

    @Test
    void findsSharesThatAreWrong() {
        int[] rows = GOOD.rows();
        int[] columns = GOOD.columns();
        double[] prices = GOOD.prices();
        isFound(plan(rows, columns, new int[] {1, 2, 4}, prices, 11, 14), Kind.ROW, 0);
        isFound(plan(rows, columns, new int[] {2, 2, 4}, prices, 12, 14), Kind.COLUMN, 0);
        isFound(plan(rows, new int[] {0, 2, 0}, GOOD.amounts(), prices, 14, 14), Kind.SHARE, 1);
        isFound(plan(rows, columns, new int[] {5, -1, 4}, prices, 14, 14), Kind.SHARE, 1);
        isFound(plan(new int[] {0, 1}, columns, GOOD.amounts(), prices, 14, 14), Kind.SHARES, -1);
    }

    @Test
    void findsCostsAndBoundsThatAreWrong() {
        int[] amounts = GOOD.amounts();
        isFound(plan(GOOD.rows(), GOOD.columns(), amounts, GOOD.prices(), 13.9, 13.9), Kind.COST, -1);
        isFound(plan(GOOD.rows(), GOOD.columns(), amounts, GOOD.prices(), Double.NaN, 14), Kind.COST, -1);
        isFound(plan(GOOD.rows(), GOOD.columns(), amounts, new double[] {1, 0}, 14, 14), Kind.BOUND, -1);
        isFound(plan(GOOD.rows(), GOOD.columns(), amounts, new double[] {2, 1}, 14, 14), Kind.BOUND, -1);
        isFound(plan(GOOD.rows(), GOOD.columns(), amounts, GOOD.prices(), 14, Double.NaN), Kind.BOUND, -1);
        isFound(plan(GOOD.rows(), GOOD.columns(), amounts, new double[] {2, -1}, 14, 14), Kind.PRICE, 1);
        isFound(plan(GOOD.rows(), GOOD.columns(), amounts, new double[] {2}, 14, 14), Kind.PRICES, -1);
        // dearer than it need be, and the bound said to be the cost: not proven either
        isFound(
                plan(new int[] {0, 1, 1}, new int[] {0, 0, 1}, new int[] {4, 1, 3}, GOOD.prices(), 17, 17),
                Kind.BOUND,
                -1);
    }
}
