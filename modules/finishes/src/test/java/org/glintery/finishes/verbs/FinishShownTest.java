package org.glintery.finishes.verbs;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.glintery.api.finishes.Finish.Sealing;
import org.glintery.api.workshop.Picture;
import org.junit.jupiter.api.Test;

class FinishShownTest {

    private static String text(int photos, int sketches) {
        return new FinishShown(
                        new UUID(1, 1),
                        "Net loft",
                        Optional.empty(),
                        Optional.empty(),
                        Optional.of(4),
                        "",
                        "",
                        List.of("wide presser", "tray"),
                        Optional.empty(),
                        Sealing.NOT_SEALED,
                        pictures(photos),
                        pictures(sketches),
                        "",
                        Set.of())
                .text();
    }

    private static List<Picture> pictures(int count) {
        return Collections.nCopies(count, new Picture("0".repeat(64), "image/png", ""));
    }

    @Test
    void onePictureIsNotSeveral() {
        assertThat(text(1, 2)).endsWith("\n  Pictures: 1 photo, 2 sketches");
        assertThat(text(3, 1)).endsWith("\n  Pictures: 3 photos, 1 sketch");
        assertThat(text(1_200, 0)).endsWith("\n  Pictures: 1\u2009200 photos");
    }

    @Test
    void whatSaysNothingHasNoLine() {
        assertThat(text(0, 0))
                .isEqualTo("Net loft\n  Score: 4 of 5\n  Tools: wide presser, tray\n  Sealing: not sealed");
    }
}
