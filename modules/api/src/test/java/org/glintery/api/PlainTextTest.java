package org.glintery.api;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.junit.jupiter.api.Test;

class PlainTextTest {

    @Test
    void makesOneLineOfAName() {
        assertThat(PlainText.line("Rope\u001b[31m-walk\u0007\u0000")).isEqualTo("Rope[31m-walk");
        assertThat(PlainText.line("\tRope\r\n walk\u2028\u0085two\n")).isEqualTo("Rope walk two");
        assertThat(PlainText.line("\u009b2J\u007f")).isEqualTo("2J");
        assertThat(PlainText.line("\u001b\n")).isEmpty();
    }

    @Test
    void leavesWhatHoldsNone() {
        for (String text : new String[] {"", " Rope-walk ", "Größe é ✓ 日本", "\u00a0\u202ftwo", "💎"}) {
            assertThat(PlainText.line(text)).isSameAs(text);
            assertThat(PlainText.lines(text)).isSameAs(text);
        }
        assertThat(PlainText.line((String) null)).isNull();
    }

    @Test
    void keepsLineBreaksAndTabs_whereTextMayBeLong() {
        assertThat(PlainText.lines("one\r\ntwo\rthree\n\tfour\u2029five\u001b[0m"))
                .isEqualTo("one\ntwo\nthree\n\tfour\nfive[0m");
    }

    @Test
    void isNotThere_whenNothingElseIsIn() {
        assertThat(PlainText.line(Optional.of("\u001b\u0007"))).isEmpty();
        assertThat(PlainText.line(Optional.of("\u0007Lin"))).contains("Lin");
        assertThat(PlainText.line(Optional.of(""))).contains("");
    }
}
