package org.glintery.framing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.glintery.framing.FrameShop.refusal;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.glintery.api.activework.Question;
import org.glintery.api.framing.FramePlan;
import org.glintery.api.framing.FramePlan.Decision;
import org.glintery.api.framing.FramePlan.Glazing;
import org.glintery.api.stash.Canvas;
import org.glintery.api.stash.Standing;
import org.glintery.api.time.About;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class FrameDecidingTest {

    private FrameShop shop;

    @BeforeEach
    void open(@TempDir Path folder) {
        shop = FrameShop.at(folder);
    }

    @AfterEach
    void close() {
        shop.close();
    }

    private List<String> decide(UUID piece, Decision decision) {
        return shop.apply(shop.framing().decide(shop.view(), piece, FramePlan.decided(decision, "hall")));
    }

    @Test
    void notFramedIsAnAnswer_alsoForAPieceWithoutASize() {
        UUID piece = shop.piece("Net loft", Standing.MADE, Canvas.NOT_SAID);

        assertThat(decide(piece, Decision.NOT_FRAMED)).isEmpty();
        assertThat(shop.plan(piece).decision()).isEqualTo(Decision.NOT_FRAMED);
        assertThat(shop.plan(piece).livesAt()).isEqualTo("hall");
    }

    @Test
    void replacesAnEarlierDecision_andUndoBringsItBack() {
        UUID piece = shop.made("Rope-walk", 400, 600);
        decide(piece, Decision.NOT_FRAMED);
        decide(piece, Decision.SLEEVE);
        assertThat(shop.plan(piece).decision()).isEqualTo(Decision.SLEEVE);

        shop.workshop().undo().orThrow();
        assertThat(shop.plan(piece).decision()).isEqualTo(Decision.NOT_FRAMED);
    }

    @Test
    void warnsBeforeAOneWayStep_ofWhatIsOpen() {
        UUID piece = shop.made("Rope-walk", 400, 600);
        About day = About.on(LocalDate.of(2025, 5, 2));
        shop.ask(piece, "Is that patch wrong?", true, Optional.empty());
        shop.ask(piece, "Would gold look better?", false, Optional.empty());
        shop.ask(piece, "Is the sky right?", true, Optional.of(new Question.Answer(true, "", day)));
        shop.ask(shop.made("Net loft", 300, 300), "Another piece's doubt", true, Optional.empty());

        assertThat(decide(piece, Decision.FRAMED)).singleElement().asString().contains("Is that patch wrong?");
        assertThat(decide(piece, Decision.SLEEVE)).isEmpty();
    }

    @Test
    void warnsOfAPieceThatIsNotMade() {
        UUID piece = shop.piece("Rope-walk", Standing.ON_THE_BENCH, Canvas.drilled(400, 600));

        assertThat(decide(piece, Decision.STRETCHED)).singleElement().asString().contains("not made yet");
        assertThat(decide(piece, Decision.NOT_FRAMED)).isEmpty();
    }

    @Test
    void refusesAPieceOrPlaceThatIsGone() {
        UUID piece = shop.made("Rope-walk", 400, 600);
        FramePlan nowhere = new FramePlan(
                Decision.NOT_FRAMED,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                3.2,
                3,
                Glazing.NONE,
                "",
                Optional.of(UUID.randomUUID()),
                Optional.empty(),
                "");

        assertThat(refusal(shop.framing().decide(shop.view(), piece, nowhere)).code())
                .isEqualTo("no-place");
        assertThat(refusal(shop.framing()
                                .decide(shop.view(), UUID.randomUUID(), FramePlan.decided(Decision.NOT_FRAMED, "")))
                        .code())
                .isEqualTo("no-piece");
    }
}
