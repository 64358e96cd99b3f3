package org.glintery.stash.ui;

import static org.assertj.core.api.Assertions.assertThat;
import static org.glintery.stash.WorkshopInFolder.T1;
import static org.glintery.stash.WorkshopInFolder.refusal;

import java.util.Map;
import org.glintery.api.ledger.Amount;
import org.glintery.api.stash.LegendLine;
import org.junit.jupiter.api.Test;

class TypedLineTest {

    private static LegendLine line(String needed, String supplied) {
        return new TypedLine("A", " T9 ", needed, supplied)
                .understood(T1, Map.of(), 300)
                .orThrow();
    }

    @Test
    void takesTheKindOfDrillFromTheOneBefore() {
        assertThat(line("", "").drill().code()).isEqualTo("T9");
        assertThat(line("", "").drill().sameKindAs(T1)).isTrue();
    }

    @Test
    void leavesEmptyFieldsUnknown() {
        assertThat(line("", "").needed()).isEmpty();
        assertThat(line("", "").supplied()).isEqualTo(Amount.unknown());
    }

    @Test
    void understandsThousands_howeverTheyAreSetApart() {
        for (String typed : new String[] {"1240", "1 240", "1,240", "1.240", "1\u2009240", "1'240"}) {
            assertThat(line(typed, "").needed()).as(typed).contains(1240L);
        }
    }

    @Test
    void understandsBagsAndRoughAmounts() {
        assertThat(line("", "2 bags").bags()).contains(2);
        assertThat(line("", "2 bags").supplied().known()).isFalse();
        assertThat(line("", "about 200").supplied()).isEqualTo(Amount.rough(200, 20));
        assertThat(line("", "250").supplied()).isEqualTo(Amount.counted(250));
    }

    /** A quarter of a bag either way, as likely all over: 75 / sqrt(3) = 43. */
    @Test
    void understandsPartsOfABag_asRoughNumbers() {
        assertThat(line("", "half a bag").supplied()).isEqualTo(Amount.rough(150, 43));
        assertThat(line("", "Most of a bag").supplied()).isEqualTo(Amount.rough(225, 43));
        assertThat(line("", "a pinch").supplied()).isEqualTo(Amount.unknown());
        assertThat(TypedLine.of(line("", "half a bag")).supplied()).isEqualTo("150 ± 43");
        assertThat(line("", "150 ± 43").supplied()).isEqualTo(Amount.rough(150, 43));
        assertThat(refusal(new TypedLine("A", "T1", "", "half a boat").understood(T1, Map.of(), 300))
                        .text())
                .isEqualTo("'half a boat' is not an amount. Write a number, or words such as 'about 200', '2 bags', "
                        + "'half a bag' or 'a pinch'.");
    }

    @Test
    void givesBackWhatWasTyped() {
        for (String supplied : new String[] {
            "", "1 bag", "2 bags", "1\u2009200 bags", "about 200", "about 1\u2009200", "250", "1\u2009250"
        }) {
            assertThat(TypedLine.of(line("10", supplied)).supplied()).isEqualTo(supplied);
        }
    }

    @Test
    void refusesWhatIsNoNumber_andALineWithoutACode() {
        assertThat(refusal(new TypedLine("A", "T1", "lots", "").understood(T1, Map.of(), 300))
                        .text())
                .isEqualTo("'lots' is not a number of drills.");
        for (String typed : new String[] {"12.5", "1,24", "1.240,5", "1,240.240", "0.500"}) {
            assertThat(refusal(new TypedLine("A", "T1", typed, "").understood(T1, Map.of(), 300))
                            .code())
                    .as(typed)
                    .isEqualTo("not-a-number");
        }
        assertThat(refusal(new TypedLine("A", " ", "1", "").understood(T1, Map.of(), 300))
                        .code())
                .isEqualTo("no-code");
    }
}
