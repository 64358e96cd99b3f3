package org.glintery.workbench.parts;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import org.junit.jupiter.api.Test;

class AboutFieldTest {
    private final AboutField field = new AboutField(Clock.fixed(Instant.parse("2026-05-02T10:00:00Z"), ZoneOffset.UTC));

    private String hintOf(String typed) {
        field.field().setText(typed);
        return field.field().getAccessibleContext().getAccessibleDescription();
    }

    @Test
    void saysHowADateWasRead_andHowNot_whereBothAreMeant() {
        assertThat(hintOf("3/4/2025"))
                .isEqualTo("Understood as 3 April 2025, not as 4 March 2025. Write the month as a word to be sure");
        assertThat(hintOf("13/4/2025")).isEqualTo("Understood as 13 April 2025");
    }
}
