package org.glintery.framing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.glintery.framing.FrameShop.MM_AN_INCH;
import static org.glintery.framing.FrameShop.refusal;

import java.nio.file.Path;
import java.util.Optional;
import java.util.UUID;
import org.glintery.api.Result;
import org.glintery.api.framing.FrameFigures;
import org.glintery.api.framing.FramePlan;
import org.glintery.api.framing.FramePlan.Decision;
import org.glintery.api.framing.FramePlan.Glazing;
import org.glintery.api.framing.Moulding;
import org.glintery.api.stash.Canvas;
import org.glintery.api.stash.Standing;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class FrameFiguresTest {

    private static final double EXACT = 1e-9;

    private FrameShop shop;

    @BeforeEach
    void open(@TempDir Path folder) {
        shop = FrameShop.at(folder);
    }

    @AfterEach
    void close() {
        shop.close();
    }

    private static FramePlan plan(
            Decision decision, Optional<Moulding> moulding, double allowanceMm, double kerfMm, Glazing glazing) {
        return new FramePlan(
                decision,
                Optional.empty(),
                Optional.empty(),
                moulding,
                allowanceMm,
                kerfMm,
                glazing,
                "",
                Optional.empty(),
                Optional.empty(),
                "");
    }

    private FrameFigures figures(UUID piece, FramePlan plan) {
        return shop.framing().figures(shop.view(), piece, plan).orThrow();
    }

    /**
     * Common framing practice, worked in inches: 16 x 20 in, moulding 2 in, lip 1/4 in, allowance 1/8 in a dimension
     * gives rails of 19 5/8 and 23 5/8 in, in sum 86 1/2 in; united inches are width plus height.
     */
    @Test
    void railsAreExact_forTheWorkedExampleInInches() {
        UUID piece = shop.made("Rope-walk", 16 * MM_AN_INCH, 20 * MM_AN_INCH);
        Moulding moulding = new Moulding("oak", 2 * MM_AN_INCH, 0.25 * MM_AN_INCH, 15);
        FrameFigures figures =
                figures(piece, plan(Decision.FRAMED, Optional.of(moulding), 0.125 * MM_AN_INCH, 0, Glazing.NONE));

        assertThat(figures.railWidthMm()).isCloseTo(19.625 * MM_AN_INCH, within(EXACT));
        assertThat(figures.railHeightMm()).isCloseTo(23.625 * MM_AN_INCH, within(EXACT));
        assertThat(figures.lengthMm()).isCloseTo(86.5 * MM_AN_INCH, within(EXACT));
        assertThat(figures.unitedInches()).isCloseTo(36, within(EXACT));
        assertThat(figures.glazingMassG()).isEmpty();
    }

    @Test
    void addsOneKerfACut() {
        UUID piece = shop.made("Rope-walk", 400, 600);
        Moulding moulding = new Moulding("oak", 30, 6, 15);
        double without = figures(piece, plan(Decision.FRAMED, Optional.of(moulding), 3.2, 0, Glazing.NONE))
                .lengthMm();
        double with = figures(piece, plan(Decision.FRAMED, Optional.of(moulding), 3.2, 2.5, Glazing.NONE))
                .lengthMm();

        assertThat(with - without).isCloseTo(4 * 2.5, within(EXACT));
    }

    /** Glass 2500 kg/m3 (EN 572-1), so 2 mm are 5.0 kg/m2; acrylic 1190 kg/m3 (ISO 7823-1), so 2 mm are 2.38 kg/m2. */
    @Test
    void weighsTheGlazing() {
        UUID piece = shop.made("Rope-walk", 500, 400);

        assertThat(glazed(piece, Decision.FRAMED, Glazing.Material.GLASS).glazingMassG())
                .hasValueSatisfying(mass -> assertThat(mass).isCloseTo(5.0 * 1000 * 0.2, within(1e-6)));
        assertThat(glazed(piece, Decision.FRAMED, Glazing.Material.ACRYLIC).glazingMassG())
                .hasValueSatisfying(mass -> assertThat(mass).isCloseTo(2.38 * 1000 * 0.2, within(1e-6)));
    }

    @Test
    void weighsNoGlazing_whereThereIsNoFrameToHoldIt() {
        UUID piece = shop.made("Rope-walk", 500, 400);

        for (Decision decision : new Decision[] {
            Decision.NOT_FRAMED, Decision.STRETCHED, Decision.ON_BOARD, Decision.HANGER, Decision.SLEEVE
        }) {
            assertThat(glazed(piece, decision, Glazing.Material.GLASS).glazingMassG())
                    .as("%s", decision)
                    .isEmpty();
        }
    }

    private FrameFigures glazed(UUID piece, Decision decision, Glazing.Material material) {
        Optional<Moulding> moulding = Optional.of(new Moulding("oak", 30, 6, 15));
        return figures(piece, plan(decision, moulding, 0, 0, Glazing.usual(material)));
    }

    @Test
    void needsNoMoulding_forBarsLathsOrNothing() {
        UUID piece = shop.made("Rope-walk", 400, 600);
        FrameFigures stretched = figures(piece, plan(Decision.STRETCHED, Optional.empty(), 3.2, 2, Glazing.NONE));
        FrameFigures hanger = figures(piece, plan(Decision.HANGER, Optional.empty(), 3.2, 2, Glazing.NONE));
        FrameFigures bare = figures(piece, plan(Decision.NOT_FRAMED, Optional.empty(), 3.2, 2, Glazing.NONE));

        assertThat(stretched.railWidthMm()).isEqualTo(400);
        assertThat(stretched.railHeightMm()).isEqualTo(600);
        assertThat(stretched.lengthMm()).isEqualTo(2 * (400 + 600) + 4 * 2);
        assertThat(hanger.lengthMm()).isEqualTo(2 * 400 + 2 * 2);
        assertThat(bare.lengthMm()).isZero();
    }

    /** ISO 216: A3 is 297 x 420 mm. */
    @Test
    void namesReadyMadeSizes_thoseItFillsFirst() {
        UUID piece = shop.made("Rope-walk", 295, 418);

        assertThat(figures(piece, plan(Decision.NOT_FRAMED, Optional.empty(), 3.2, 3, Glazing.NONE))
                        .readyMade())
                .first()
                .isEqualTo("A3");
    }

    @Test
    void tellsTheMountWindow_whereAFrameLeavesRoom() {
        UUID piece = shop.made("Rope-walk", 300, 400);

        assertThat(figures(piece, plan(Decision.NOT_FRAMED, Optional.empty(), 3.2, 3, Glazing.NONE))
                        .readyMade())
                .startsWith("30 x 40 cm")
                .contains("40 x 50 cm with a mount: window 294 x 394 mm, 53 mm at the sides, 53 mm above and below");
    }

    @Test
    void takesTheArtworkFromThePlan_beforeTheDrilledArea() {
        UUID piece = shop.made("Rope-walk", 400, 600);
        FramePlan trimmed = new FramePlan(
                Decision.STRETCHED,
                Optional.of(380.0),
                Optional.empty(),
                Optional.empty(),
                3.2,
                0,
                Glazing.NONE,
                "",
                Optional.empty(),
                Optional.empty(),
                "");

        assertThat(figures(piece, trimmed).railWidthMm()).isEqualTo(380);
        assertThat(figures(piece, trimmed).railHeightMm()).isEqualTo(600);
    }

    @Test
    void refusesByName_whenANumberIsMissing() {
        UUID unmeasured = shop.piece("Net loft", Standing.MADE, Canvas.NOT_SAID);
        UUID measured = shop.made("Rope-walk", 400, 600);
        FramePlan framed = plan(Decision.FRAMED, Optional.empty(), 3.2, 3, Glazing.NONE);
        Result<FrameFigures> unknown = shop.framing().figures(shop.view(), UUID.randomUUID(), framed);

        assertThat(refusal(shop.framing().figures(shop.view(), unmeasured, framed))
                        .code())
                .isEqualTo("no-size");
        assertThat(refusal(shop.framing().figures(shop.view(), measured, framed))
                        .code())
                .isEqualTo("no-moulding");
        assertThat(refusal(unknown).code()).isEqualTo("no-piece");
    }

    @Test
    void refusesNumbersThatCanNotBe() {
        UUID piece = shop.made("Rope-walk", 400, 600);
        Moulding lipped = new Moulding("oak", 10, 12, 15);

        for (FramePlan wrong : new FramePlan[] {
            plan(Decision.FRAMED, Optional.of(lipped), 3.2, 3, Glazing.NONE),
            plan(Decision.STRETCHED, Optional.empty(), -1, 3, Glazing.NONE),
            plan(Decision.STRETCHED, Optional.empty(), 3.2, Double.NaN, Glazing.NONE)
        }) {
            assertThat(refusal(shop.framing().figures(shop.view(), piece, wrong))
                            .code())
                    .isEqualTo("bad-length");
            assertThat(refusal(shop.framing().decide(shop.view(), piece, wrong)).code())
                    .isEqualTo("bad-length");
        }
    }
}
