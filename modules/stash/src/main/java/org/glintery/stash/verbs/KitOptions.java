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
import org.glintery.api.workshop.Picture;

/** The options that describe a kit and its piece. */
final class KitOptions {

    static final List<Param> PARAMS = List.of(
            Param.option("title", "TITLE", "of the kit and its piece; the name of the file when not said"),
            Param.option("source", "SHOP", "the shop, or whom it came from"),
            Param.option("standing", "STANDING", WordOption.all(Standing.class) + "; shelved when not said"),
            Param.option("since", "DATE", "since when"),
            Param.option("ordered", "DATE", "when it was ordered"),
            Param.option("arrived", "DATE", "when it arrived"),
            Param.option("price", "MONEY", "in the workshop's currency"),
            Param.option("postage", "MONEY", "in the workshop's currency"),
            Param.option("shape", "SHAPE", "of most of its drills: round, square or special"),
            Param.option("coverage", "COVERAGE", WordOption.all(Coverage.class)),
            Param.option("columns", "N", "cells across"),
            Param.option("rows", "N", "cells down"),
            Param.option("pitch", "MM", "from cell to cell, measured"),
            Param.option("width", "MM", "of the drilled area"),
            Param.option("height", "MM", "of the drilled area"),
            Param.option("cloth-width", "MM", "of the whole cloth"),
            Param.option("cloth-height", "MM", "of the whole cloth"),
            Param.option("sections", "N", "sections it is worked in"),
            Param.option("notes", "TEXT", "anything else about the kit"));

    private static final int MOST_CELLS = 100_000;
    private static final double MOST_MM = 100_000;

    private final VerbCall call;
    private final String title;

    KitOptions(VerbCall call, String title) {
        this.call = call;
        this.title = title;
    }

    Result<Kit> kit(List<Picture> pictures) {
        return DateOption.of(call, "ordered")
                .then(ordered -> DateOption.of(call, "arrived")
                        .then(arrived -> money("price")
                                .then(price -> money("postage")
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
                                        .then(clothHeight -> WordOption.millimetres(call, "pitch", 1_000)
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

    private Result<Optional<Money>> money(String option) {
        Optional<String> written = call.value(option);
        if (written.isEmpty()) {
            return Result.ok(Optional.empty());
        }
        String number = written.get().strip().replace(',', '.');
        if (number.matches("\\d{1,9}(\\.\\d{1,4})?")) {
            return Result.ok(Optional.of(new Money(new BigDecimal(number))));
        }
        return Result.refused(
                WordOption.USAGE, "--" + option + " is an amount such as 24.90, not '" + written.get() + "'.");
    }
}
