package org.glintery.framing.ui;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.glintery.framing.FrameShop.refusal;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Function;
import org.glintery.api.Result;
import org.glintery.api.framing.FramePlan.Decision;
import org.glintery.api.framing.Moulding;
import org.glintery.api.stash.Canvas;
import org.glintery.api.stash.Standing;
import org.glintery.api.time.About;
import org.glintery.api.workshop.ChangeSet;
import org.glintery.api.workshop.View;
import org.glintery.framing.FrameShop;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PlanEditsTest {

    private static final Clock CLOCK = Clock.fixed(Instant.parse("2025-05-02T10:00:00Z"), ZoneOffset.UTC);

    private FrameShop shop;
    private UUID piece;
    private PlanEdits edits;

    @BeforeEach
    void open(@TempDir Path folder) {
        shop = FrameShop.at(folder);
        piece = shop.made("Rope-walk", 400, 600);
        edits = new PlanEdits(shop.framing(), piece, CLOCK);
    }

    @AfterEach
    void close() {
        shop.close();
    }

    private void apply(Function<View, Result<ChangeSet>> edit) {
        shop.apply(edit.apply(shop.view()));
    }

    private HangingOptions options(Optional<Moulding> tried) {
        return HangingOptions.of(shop.view(), shop.framing(), piece, tried);
    }

    @Test
    void aDecisionIsDatedToday_andLeavingItOpenTakesTheDayAway() {
        apply(edits.decide(Decision.SLEEVE));
        assertThat(shop.plan(piece).decidedOn()).contains(About.on(LocalDate.of(2025, 5, 2)));

        apply(edits.decide(Decision.NOT_DECIDED));
        assertThat(shop.plan(piece).decidedOn()).isEmpty();
    }

    @Test
    void aMouldingBeginsWithItsWidth() {
        assertThat(refusal(edits.length("6", (copy, mm) -> copy.lipMm = mm).apply(shop.view()))
                        .code())
                .isEqualTo("no-width");
        apply(edits.length("30", (copy, mm) -> copy.mouldingWidthMm = mm));
        apply(edits.length("6,5", (copy, mm) -> copy.lipMm = mm));

        assertThat(shop.plan(piece).moulding()).contains(new Moulding("", 30, 6.5, 0));
        apply(edits.set(PlanCopy::noMoulding));
        assertThat(shop.plan(piece).moulding()).isEmpty();
    }

    @Test
    void lengthsThatAreNoneAreRefused() {
        assertThat(refusal(edits.length("wide", (copy, mm) -> copy.kerfMm = mm).apply(shop.view()))
                        .code())
                .isEqualTo("length");
    }

    @Test
    void aFrameIsDrawnAsLongAsItsRails_andShowsWhatItsLipLeaves() {
        HangingOptions options = options(Optional.of(new Moulding("", 30, 6, 0)));
        Hanging framed = options.options().stream()
                .filter(option -> option.plan().decision() == Decision.FRAMED)
                .findFirst()
                .orElseThrow()
                .hanging();

        // 400 + 3.2 + 2 (30 - 6) across; within the rails 30 are hidden on each side
        assertThat(framed.outer().getWidth()).isCloseTo(451.2, within(1e-9));
        assertThat(framed.visible().getWidth()).isCloseTo(451.2 - 60, within(1e-9));
        assertThat(framed.visible().getX()).isEqualTo(30);
        assertThat(framed.isFramed()).isTrue();
        assertThat(options.wallWidthMm()).isCloseTo(451.2, within(1e-9));
    }

    @Test
    void waysToHangAreComparedSideBySide_andSayWhatIsMissing() {
        assertThat(options(Optional.empty()).options())
                .extracting(option -> option.plan().decision())
                .containsExactly(
                        Decision.NOT_FRAMED,
                        Decision.FRAMED,
                        Decision.STRETCHED,
                        Decision.ON_BOARD,
                        Decision.HANGER,
                        Decision.SLEEVE);
        assertThat(options(Optional.empty()).missing()).isEmpty();

        UUID unmeasured = shop.piece("Net loft", Standing.MADE, Canvas.NOT_SAID);
        HangingOptions none = HangingOptions.of(shop.view(), shop.framing(), unmeasured, Optional.empty());
        assertThat(none.options()).isEmpty();
        assertThat(none.missing()).contains("size is not known");
    }

    @Test
    void anExampleMouldingIsDrawn_butNotRecorded() {
        HangingOptions.Option framed = options(Optional.empty()).options().get(1);

        assertThat(framed.hanging().isFramed()).isTrue();
        assertThat(framed.plan().moulding()).isEmpty();
        assertThat(options(Optional.empty()).example()).isTrue();
        apply(edits.length("30", (copy, mm) -> copy.mouldingWidthMm = mm));
        assertThat(options(Optional.empty()).example()).isFalse();
    }

    @Test
    void aTriedWayIsRecordedAsItWasDrawn() {
        HangingOptions options = options(Optional.of(new Moulding("", 30, 6, 0)));
        apply(edits.decideOn(options.options().get(1).plan()));

        assertThat(shop.plan(piece).decision()).isEqualTo(Decision.FRAMED);
        assertThat(shop.plan(piece).moulding()).contains(new Moulding("", 30, 6, 0));
        assertThat(options(Optional.empty()).decided()).isEqualTo(Decision.FRAMED);
    }

    @Test
    void thePageDrawsTheArtworkAlone_whileItsFrameLacksAMoulding() {
        apply(edits.decide(Decision.FRAMED));
        FramePage page = FramePage.of(shop.view(), shop.framing(), piece);

        assertThat(page.figures()).isEmpty();
        assertThat(page.missing()).contains("moulding is not known");
        assertThat(page.hanging()).hasValueSatisfying(hanging -> {
            assertThat(hanging.isFramed()).isFalse();
            assertThat(hanging.outer().getWidth()).isEqualTo(400);
        });
    }

    @Test
    void thePageTellsWhatToSettleFirst_onlyBeforeAOneWayStep() {
        shop.ask(piece, "Is that patch wrong?", true, Optional.empty());
        assertThat(FramePage.of(shop.view(), shop.framing(), piece).settleNow()).isEmpty();
        apply(edits.decide(Decision.ON_BOARD));

        FramePage page = FramePage.of(shop.view(), shop.framing(), piece);
        assertThat(page.settleNow()).containsExactly("Is that patch wrong?");
        assertThat(page.hanging()).isPresent();
    }
}
