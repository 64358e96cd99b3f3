package org.glintery.workbench.words;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import javax.swing.JLabel;
import org.glintery.api.stash.Standing;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class WordsTest {
    private static final int LEAST_WORDS = 50;
    private static final int LONGEST = 110;

    @Test
    void holdsTheWordsOfTheTrade() {
        assertThat(Word.values()).hasSizeGreaterThanOrEqualTo(LEAST_WORDS);
        assertThat(Word.texts().keySet())
                .as("texts of words that are not there")
                .allMatch(key -> Arrays.stream(Word.values()).anyMatch(word -> key.startsWith(word.name() + ".")));
    }

    @ParameterizedTest
    @EnumSource(Word.class)
    void saysEachInOnePlainSentence(Word word) {
        assertThat(word.term()).isNotBlank().isEqualTo(word.term().strip());
        assertThat(word.meaning())
                .matches("\\p{Lu}[^.!?]*\\.")
                .hasSizeLessThanOrEqualTo(LONGEST)
                .doesNotContainIgnoringCase("ledger")
                .isNotEqualToIgnoringCase(word.term() + ".");
    }

    @Test
    void givesNoFormToTwoWords() {
        List<String> forms =
                Arrays.stream(Word.values()).flatMap(w -> w.forms().stream()).toList();

        assertThat(forms).doesNotHaveDuplicates();
    }

    @ParameterizedTest
    @EnumSource(Standing.class)
    void explainsEveryStanding(Standing standing) {
        assertThat(Word.of(standing).meaning()).isNotBlank();
    }

    @Test
    void findsWordsInALabel_longerOnesFirst() {
        assertThat(Words.in("Drills in one pocket")).containsExactly(Word.DRILL, Word.POCKET);
        assertThat(Words.in("Kit up")).containsExactly(Word.KIT_UP);
        assertThat(Words.in("Its kit")).containsExactly(Word.KIT);
        assertThat(Words.in("Drilled size in cm")).containsExactly(Word.DRILLED_SIZE);
    }

    @Test
    void takesEverydayWords_onlyWhereTheyStandAlone() {
        assertThat(Words.in("Needed")).containsExactly(Word.NEEDED);
        assertThat(Words.in("What is needed first")).isEmpty();
        assertThat(Words.in("Kitchen")).isEmpty();
    }

    @Test
    void explainsALabel_thatSaysNothingOfItsOwn() {
        JLabel plain = Words.explain(new JLabel(), "Rebate");
        JLabel telling = new JLabel();
        telling.setToolTipText("its own");
        Words.explain(telling, "Rebate");

        assertThat(plain.getToolTipText()).contains(Word.REBATE.meaning());
        assertThat(plain.getAccessibleContext().getAccessibleDescription()).doesNotContain("<");
        assertThat(telling.getToolTipText()).isEqualTo("its own");
        assertThat(Words.explain(new JLabel(), "Ferry").getToolTipText()).isNull();
    }
}
