package org.glintery.stash;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class CodeOrderTest {

    @Test
    void ordersNumbersByValue_andTheRestByLetter() {
        List<String> ordered = List.of("", "2", "10", "A", "A2", "A010", "A10B", "A11", "B1");
        List<String> shuffled = new ArrayList<>(ordered);
        Collections.shuffle(shuffled, new Random(5));
        shuffled.sort(CodeOrder.NATURAL);

        assertThat(shuffled).isEqualTo(ordered);
    }
}
