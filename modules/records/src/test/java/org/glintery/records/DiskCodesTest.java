package org.glintery.records;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Arrays;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.glintery.api.GlinteryException;
import org.glintery.api.ledger.Amount;
import org.glintery.api.workshop.HistoryLine;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** What workshops on disk already say. A line here may be added, never changed. */
class DiskCodesTest {
    static Stream<Arguments> onDisk() {
        return Stream.of(
                Arguments.of(Amount.Basis.class, DiskCodes.BASES, "COUNTED=0 WEIGHED=1 BY_BAG=2 ROUGH=3 UNKNOWN=4"),
                Arguments.of(HistoryLine.Kind.class, DiskCodes.CHANGES, "DONE=0 UNDO=1 REDO=2"),
                Arguments.of(MovementRow.Kind.class, DiskCodes.MOVEMENTS, "MOVEMENT=0 REVERSAL=1 STOCKTAKE=2"));
    }

    @ParameterizedTest
    @MethodSource("onDisk")
    <E extends Enum<E>> void keepsTheNumberOfEveryConstant(Class<E> kind, DiskCodes<E> codes, String pinned) {
        assertThat(codes.all().keySet()).containsExactlyInAnyOrder(kind.getEnumConstants());
        assertThat(Arrays.stream(kind.getEnumConstants())
                        .map(constant -> constant + "=" + codes.of(constant))
                        .collect(Collectors.toSet()))
                .containsExactlyInAnyOrder(pinned.split(" "));
        codes.all().forEach((constant, code) -> assertThat(codes.constant(code)).isEqualTo(constant));
    }

    @Test
    void namesANumberThatNobodyHas() {
        assertThatThrownBy(() -> DiskCodes.BASES.constant(9))
                .isInstanceOf(GlinteryException.class)
                .hasMessageContaining("unknown number 9");
    }
}
