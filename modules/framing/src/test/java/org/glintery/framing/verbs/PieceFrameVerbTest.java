package org.glintery.framing.verbs;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Optional;
import java.util.UUID;
import org.glintery.api.Result;
import org.glintery.api.framing.FramePlan;
import org.glintery.api.framing.FramePlan.Decision;
import org.glintery.api.stash.Canvas;
import org.glintery.api.stash.Standing;
import org.glintery.api.storage.KeepingPlace;
import org.glintery.api.verb.VerbResult;
import org.glintery.api.workshop.ChangeSet;
import org.glintery.framing.FrameShop;
import org.glintery.testkit.FakeCall;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PieceFrameVerbTest {

    private FrameShop shop;

    @BeforeEach
    void open(@TempDir Path folder) {
        shop = FrameShop.at(folder);
    }

    @AfterEach
    void close() {
        shop.close();
    }

    private FakeCall call() {
        return new FakeCall(shop.workshop()).with("piece", "Rope-walk");
    }

    private static VerbResult.Said said(FakeCall call) {
        VerbResult result = new PieceFrameVerb().run(call);
        assertThat(result).isInstanceOf(VerbResult.Said.class);
        return (VerbResult.Said) result;
    }

    @Test
    void recordsAFrame_andTellsItsRails() {
        UUID piece = shop.made("Rope-walk", 400, 600);
        VerbResult.Said said = said(call().flagged("frame")
                .with("moulding-width", "30")
                .with("lip", "6")
                .with("rebate", "15")
                .with("lives-at", "hall"));

        // 400 + 3.2 + 2 (30 - 6) and 600 + 3.2 + 2 (30 - 6); their sum twice, and four cuts of 3 mm
        assertThat(said.text())
                .startsWith("Rope-walk: framed.")
                .contains("Rails: 2 of 451.2 mm, 2 of 651.2 mm; 2216.8 mm in all")
                .contains("Lives at: hall");
        assertThat(shop.plan(piece).moulding()).isPresent();
    }

    @Test
    void previewRecordsNothing() {
        UUID piece = shop.made("Rope-walk", 400, 600);
        VerbResult.Said said = said(call().flagged("frame").flagged("preview").with("moulding-width", "30"));

        assertThat(said.text()).contains("Nothing was recorded").contains("Rails:");
        assertThat(shop.view().find(FramePlan.TYPE, piece)).isEmpty();
    }

    @Test
    void notFramedNeedsNothingElse() {
        UUID piece = shop.piece("Rope-walk", Standing.MADE, Canvas.NOT_SAID);

        assertThat(said(call().flagged("not-framed")).text()).isEqualTo("Rope-walk: not framed.");
        assertThat(shop.plan(piece).decision()).isEqualTo(Decision.NOT_FRAMED);
    }

    @Test
    void laterOptionsKeepWhatWasDecidedBefore() {
        UUID piece = shop.made("Rope-walk", 400, 600);
        said(call().flagged("frame").with("moulding-width", "30").with("glazing", "acrylic"));
        said(call().with("width", "410,5").with("lip", "5"));

        FramePlan plan = shop.plan(piece);
        assertThat(plan.decision()).isEqualTo(Decision.FRAMED);
        assertThat(plan.artworkWidthMm()).contains(410.5);
        assertThat(plan.moulding()).hasValueSatisfying(moulding -> {
            assertThat(moulding.widthMm()).isEqualTo(30);
            assertThat(moulding.lipMm()).isEqualTo(5);
        });
        assertThat(plan.glazing()).isEqualTo(FramePlan.Glazing.usual(FramePlan.Glazing.Material.ACRYLIC));
        said(call().with("glazing-thickness", "3,5"));
        assertThat(shop.plan(piece).glazing())
                .isEqualTo(new FramePlan.Glazing(FramePlan.Glazing.Material.ACRYLIC, 3.5));
    }

    @Test
    void showsThePlan_whenNothingElseIsSaid() {
        shop.made("Rope-walk", 400, 600);
        said(call().flagged("hanger"));
        long revision = shop.view().revision();

        assertThat(said(call()).text()).startsWith("Rope-walk: hanger.");
        assertThat(shop.view().revision()).isEqualTo(revision);
    }

    @Test
    void findsAKeepingPlaceByName() {
        UUID piece = shop.made("Rope-walk", 400, 600);
        UUID place = UUID.randomUUID();
        shop.apply(Result.ok(ChangeSet.named("Add a place")
                .create(KeepingPlace.TYPE, place, new KeepingPlace("North wall", Optional.empty(), ""))
                .build()));

        assertThat(said(call().flagged("not-framed").with("place", "north wall"))
                        .text())
                .contains("Lives at: North wall");
        assertThat(shop.plan(piece).place()).contains(place);
        assertThat(new PieceFrameVerb().run(call().with("place", "cellar"))).isInstanceOf(VerbResult.WrongUsage.class);
    }

    @Test
    void isWrongUsage_whenOptionsCanNotBeUnderstood() {
        shop.made("Rope-walk", 400, 600);

        assertThat(new PieceFrameVerb().run(call().flagged("frame").flagged("sleeve")))
                .isInstanceOf(VerbResult.WrongUsage.class);
        assertThat(new PieceFrameVerb().run(call().with("width", "wide"))).isInstanceOf(VerbResult.WrongUsage.class);
        assertThat(new PieceFrameVerb().run(call().with("width", "1,234")))
                .isEqualTo(VerbResult.wrongUsage(
                        "--width '1,234' can be read as 1.234 or as 1234. Write 1.2340 or 1234."));
        assertThat(new PieceFrameVerb().run(call().with("lip", "5"))).isInstanceOf(VerbResult.WrongUsage.class);
        assertThat(new PieceFrameVerb().run(call().with("glazing", "ice"))).isInstanceOf(VerbResult.WrongUsage.class);
        assertThat(new PieceFrameVerb().run(call().flagged("frame").with("glazing-thickness", "3")))
                .isInstanceOf(VerbResult.WrongUsage.class);
    }

    @Test
    void tellsWhatIsMissing_andRecordsTheDecisionAllTheSame() {
        UUID piece = shop.piece("Rope-walk", Standing.MADE, Canvas.NOT_SAID);

        assertThat(said(call().flagged("frame")).text()).contains("The size is not known yet");
        assertThat(shop.plan(piece).decision()).isEqualTo(Decision.FRAMED);
    }

    @Test
    void saysWhichWordsDoNotGoTogether() {
        UUID piece = shop.made("Rope-walk", 400, 600);
        String apart = "--on-board and --glazing don't go together: --glazing belongs to --frame.";

        assertThat(new PieceFrameVerb().run(call().flagged("on-board").with("glazing", "glass")))
                .isEqualTo(VerbResult.wrongUsage(apart));
        assertThat(new PieceFrameVerb().run(call().flagged("on-board").with("kerf", "2")))
                .isEqualTo(
                        VerbResult.wrongUsage(
                                "--on-board and --kerf don't go together: --kerf belongs to --frame, --stretched or --hanger."));
        assertThat(new PieceFrameVerb().run(call().flagged("not-framed").with("moulding-width", "30")))
                .isInstanceOf(VerbResult.WrongUsage.class);
        said(call().flagged("on-board").with("glazing", "none"));
        assertThat(new PieceFrameVerb().run(call().with("lip", "4").with("moulding-width", "30")))
                .isEqualTo(VerbResult.wrongUsage("--moulding-width belongs to --frame, and this piece is: on a board."
                        + " Say how it will hang now as well, or leave --moulding-width out."));
        assertThat(shop.plan(piece).moulding()).isEmpty();
        said(call().flagged("stretched").with("kerf", "2"));
        said(call().flagged("undecided").with("glazing", "glass"));
    }
}
