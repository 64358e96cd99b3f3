package org.glintery.demo.drills;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashSet;
import java.util.Set;
import org.glintery.colour.Lab;
import org.junit.jupiter.api.Test;

class DemoCardTest {
    private static final String CHARACTERS = "0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ";

    private final DemoCard card = new DemoCard();

    @Test
    void has120DifferentColoursAndCodes() {
        Set<String> codes = new HashSet<>();
        Set<Integer> colours = new HashSet<>();
        for (int i = 0; i < card.size(); i++) {
            codes.add(card.code(i));
            colours.add(card.colour(i).rgb());
            assertThat(card.code(i)).matches("[0-8][BDFHKMPRT][0-8]-[A-HJ-NPR-Z]");
        }
        assertThat(card.size()).isEqualTo(120);
        assertThat(codes).hasSize(120);
        assertThat(colours).hasSize(120);
    }

    @Test
    void lieOnTheLattice_asTheirCodesSay() {
        for (int i = 0; i < card.size(); i++) {
            Lab lab = card.colour(i).lab();
            // Half a step of an 8-bit channel moves a colour by less than 1 in each of L, a and b.
            assertThat(lab.l() - (9 + 10.5 * (card.code(i).charAt(0) - '0'))).isBetween(-1.0, 1.0);
            assertThat(lab.a() - 20 * ("BDFHKMPRT".indexOf(card.code(i).charAt(1)) - 4))
                    .isBetween(-1.0, 1.0);
            assertThat(lab.b() - 20 * (card.code(i).charAt(2) - '0' - 4)).isBetween(-1.0, 1.0);
        }
    }

    @Test
    void catchesOneWrongCharacter_andTwoFiguresSwapped() {
        int tried = 0;
        for (int i = 0; i < card.size(); i++) {
            String start = card.code(i).substring(0, 3);
            char check = card.code(i).charAt(4);
            for (int place = 0; place < 3; place++) {
                String allowed = place == 1 ? "BDFHKMPRT" : CHARACTERS.substring(0, 10);
                for (char other : allowed.toCharArray()) {
                    if (other != start.charAt(place)) {
                        tried++;
                        String wrong = start.substring(0, place) + other + start.substring(place + 1);
                        assertThat(DemoCard.check(wrong)).as(wrong).isNotEqualTo(check);
                    }
                }
            }
            if (start.charAt(0) != start.charAt(2)) {
                tried++;
                String swapped = "" + start.charAt(2) + start.charAt(1) + start.charAt(0);
                assertThat(DemoCard.check(swapped)).as(swapped).isNotEqualTo(check);
            }
        }
        assertThat(tried).isGreaterThan(3000);
    }
}
