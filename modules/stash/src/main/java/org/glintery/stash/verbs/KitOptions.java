package org.glintery.stash.verbs;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.glintery.api.Result;
import org.glintery.api.ledger.Shape;
import org.glintery.api.stash.Canvas;
import org.glintery.api.stash.Coverage;
import org.glintery.api.stash.Kit;
import org.glintery.api.stash.Money;
import org.glintery.api.stash.Piece;
import org.glintery.api.stash.Standing;
import org.glintery.api.verb.Param;
import org.glintery.api.verb.VerbCall;
import org.glintery.api.verb.WrittenDecimal;
import org.glintery.api.workshop.Picture;
import org.openide.util.NbBundle.Messages;

/** The options that describe a kit and its piece. */
final class KitOptions {

    @Messages({
        "KitOptions.title=of the kit and its piece; the name of the file when not said",
        "KitOptions.source=the shop, or whom it came from",
        "KitOptions.since=since when",
        "KitOptions.ordered=when it was ordered",
        "KitOptions.arrived=when it arrived",
        "KitOptions.money=in the workshop's currency",
        "KitOptions.shape=of most of its drills: round, square or special",
        "KitOptions.columns=cells across",
        "KitOptions.rows=cells down",
        "KitOptions.pitch=from cell to cell, measured",
        "KitOptions.area=of the drilled area",
        "KitOptions.cloth=of the whole cloth",
        "KitOptions.sections=sections it is worked in",
        "KitOptions.keptAt=where it is kept, such as Tall shelf; made when it is new",
        "KitOptions.notes=anything else about the kit",
        "# {0} - words",
        "KitOptions.standing={0}; shelved when not said"
    })
    static final List<Param> PARAMS = List.of(
            Param.option("title", "TITLE", Bundle.KitOptions_title()),
            Param.option("source", "SHOP", Bundle.KitOptions_source()),
            Param.option("standing", "STANDING", Bundle.KitOptions_standing(WordOption.all(Standing.class))),
            Param.option("since", "DATE", Bundle.KitOptions_since()),
            Param.option("ordered", "DATE", Bundle.KitOptions_ordered()),
            Param.option("arrived", "DATE", Bundle.KitOptions_arrived()),
            Param.option("price", "MONEY", Bundle.KitOptions_money()),
            Param.option("postage", "MONEY", Bundle.KitOptions_money()),
            Param.option("shape", "SHAPE", Bundle.KitOptions_shape()),
            Param.option("coverage", "COVERAGE", WordOption.all(Coverage.class)),
            Param.option("columns", "N", Bundle.KitOptions_columns()),
            Param.option("rows", "N", Bundle.KitOptions_rows()),
            Param.option("pitch", "MM", Bundle.KitOptions_pitch()),
            Param.option("width", "MM", Bundle.KitOptions_area()),
            Param.option("height", "MM", Bundle.KitOptions_area()),
            Param.option("cloth-width", "MM", Bundle.KitOptions_cloth()),
            Param.option("cloth-height", "MM", Bundle.KitOptions_cloth()),
            Param.option("sections", "N", Bundle.KitOptions_sections()),
            Param.option("kept-at", "PLACE", Bundle.KitOptions_keptAt()),
            Param.option("notes", "TEXT", Bundle.KitOptions_notes()));

    static final int MOST_CELLS = 100_000;
    static final double MOST_MM = 100_000;
    static final double MOST_PITCH_MM = 1_000;
    private static final int MOST_DECIMALS = 4;
    private static final BigDecimal MOST_MONEY = BigDecimal.valueOf(1_000_000_000);

    private final VerbCall call;
    private final String title;

    KitOptions(VerbCall call, String title) {
        this.call = call;
        this.title = title;
    }

    Result<Kit> kit(List<Picture> pictures) {
        return DateOption.of(call, "ordered")
                .then(ordered -> DateOption.of(call, "arrived")
                        .then(arrived -> money(call, "price")
                                .then(price -> money(call, "postage")
                                        .then(postage -> Result.ok(new Kit(
                                                title,
                                                call.value("source"),
                                                ordered,
                                                arrived,
                                                price,
                                                postage,
                                                Optional.empty(),
                                                pictures,
                                                call.value("notes").orElse("")))))));
    }

    Result<Piece> piece(UUID kit, List<Picture> pictures) {
        return WordOption.word(call, "standing", Standing.class)
                .then(standing -> WordOption.word(call, "coverage", Coverage.class)
                        .then(coverage -> WordOption.word(call, "shape", Shape.class)
                                .then(shape -> DateOption.of(call, "since")
                                        .then(since -> WordOption.whole(call, "sections", 1, MOST_CELLS)
                                                .then(sections -> canvas().then(canvas -> Result.ok(new Piece(
                                                        title,
                                                        Optional.of(kit),
                                                        Optional.empty(),
                                                        standing.orElse(Standing.SHELVED),
                                                        since,
                                                        coverage.orElse(Coverage.NOT_SAID),
                                                        shape,
                                                        canvas,
                                                        sections.map(Long::intValue),
                                                        pictures,
                                                        Optional.empty(),
                                                        ""))))))));
    }

    private Result<Canvas> canvas() {
        return WordOption.millimetres(call, "width", MOST_MM)
                .then(width -> WordOption.millimetres(call, "height", MOST_MM)
                        .then(height -> WordOption.millimetres(call, "cloth-width", MOST_MM)
                                .then(clothWidth -> WordOption.millimetres(call, "cloth-height", MOST_MM)
                                        .then(clothHeight -> WordOption.millimetres(call, "pitch", MOST_PITCH_MM)
                                                .then(pitch -> WordOption.whole(call, "columns", 1, MOST_CELLS)
                                                        .then(columns -> WordOption.whole(call, "rows", 1, MOST_CELLS)
                                                                .then(rows -> Result.ok(new Canvas(
                                                                        width,
                                                                        height,
                                                                        clothWidth,
                                                                        clothHeight,
                                                                        pitch,
                                                                        columns.map(Long::intValue),
                                                                        rows.map(Long::intValue))))))))));
    }

    @Messages({
        "# {0} - option",
        "# {1} - what is written",
        "KitOptions.noMoney=--{0} is an amount such as 24.90, not ''{1}''."
    })
    static Result<Optional<Money>> money(VerbCall call, String option) {
        Optional<String> written = call.value(option);
        if (written.isEmpty()) {
            return Result.ok(Optional.empty());
        }
        Optional<BigDecimal> amount = WrittenDecimal.ofMoney(written.get())
                .filter(number ->
                        number.signum() >= 0 && number.scale() <= MOST_DECIMALS && number.compareTo(MOST_MONEY) < 0);
        return amount.isPresent()
                ? Result.ok(amount.map(Money::new))
                : Result.refused(
                        WordOption.USAGE,
                        WrittenDecimal.doubtOfMoney(option, written.get())
                                .orElseGet(() -> Bundle.KitOptions_noMoney(option, written.get())));
    }
}
