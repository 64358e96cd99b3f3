package org.glintery.stash.verbs;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.glintery.api.Result;
import org.glintery.api.ledger.Shape;
import org.glintery.api.stash.Canvas;
import org.glintery.api.stash.Coverage;
import org.glintery.api.stash.Kit;
import org.glintery.api.stash.Piece;
import org.glintery.api.stash.Standing;
import org.glintery.api.time.About;
import org.glintery.api.verb.Param;
import org.glintery.api.verb.VerbCall;
import org.openide.util.NbBundle.Messages;

/**
 * What can be corrected of a piece and of its kit, as options over what was known. An empty value takes away what was known.
 * Used once; not safe for several threads.
 */
final class PieceOptions {

    static final String KEPT_AT = "kept-at";

    @Messages({
        "PieceOptions.title=of the piece",
        "PieceOptions.since=since when; today when only --standing is said",
        "PieceOptions.story=what there is to tell of it",
        "PieceOptions.notes=anything else about its kit"
    })
    private static final List<Param> OF_PIECE = List.of(
            Param.option("title", "TITLE", Bundle.PieceOptions_title()),
            Param.option("standing", "STANDING", WordOption.all(Standing.class)),
            Param.option("since", "DATE", Bundle.PieceOptions_since()),
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
            Param.option(KEPT_AT, "PLACE", Bundle.KitOptions_keptAt()),
            Param.option("story", "TEXT", Bundle.PieceOptions_story()));

    private static final List<Param> OF_KIT = List.of(
            Param.option("source", "SHOP", Bundle.KitOptions_source()),
            Param.option("ordered", "DATE", Bundle.KitOptions_ordered()),
            Param.option("arrived", "DATE", Bundle.KitOptions_arrived()),
            Param.option("price", "MONEY", Bundle.KitOptions_money()),
            Param.option("postage", "MONEY", Bundle.KitOptions_money()),
            Param.option("notes", "TEXT", Bundle.PieceOptions_notes()));

    static final List<Param> PARAMS =
            Stream.concat(OF_PIECE.stream(), OF_KIT.stream()).toList();

    private final VerbCall call;
    private Optional<String> misunderstood = Optional.empty();

    PieceOptions(VerbCall call) {
        this.call = call;
    }

    /** What was first not understood; what the other methods gave is then not to be used. */
    Optional<String> misunderstood() {
        return misunderstood;
    }

    boolean tellOfPiece() {
        return OF_PIECE.stream().anyMatch(param -> call.value(param.name()).isPresent());
    }

    boolean tellOfKit() {
        return OF_KIT.stream().anyMatch(param -> call.value(param.name()).isPresent());
    }

    /** @param place the keeping place that {@code --kept-at} named */
    Piece over(Piece old, Optional<UUID> place) {
        Standing standing = over(
                        "standing",
                        () -> WordOption.word(call, "standing", Standing.class),
                        Optional.of(old.standing()))
                .orElse(old.standing());
        Optional<About> before =
                standing == old.standing() ? old.standingSince() : Optional.of(About.on(LocalDate.now(call.clock())));
        return new Piece(
                call.value("title").map(String::strip).orElse(old.title()),
                old.kit(),
                old.madeAgainFrom(),
                standing,
                over("since", () -> DateOption.of(call, "since"), before),
                over("coverage", () -> WordOption.word(call, "coverage", Coverage.class), Optional.of(old.coverage()))
                        .orElse(Coverage.NOT_SAID),
                over("shape", () -> WordOption.word(call, "shape", Shape.class), old.drillShape()),
                over(old.canvas()),
                whole("sections", old.sections()),
                old.pictures(),
                call.value(KEPT_AT).isPresent() ? place : old.keptAt(),
                call.value("story").map(String::strip).orElse(old.story()));
    }

    private Canvas over(Canvas old) {
        return new Canvas(
                millimetres("width", KitOptions.MOST_MM, old.drilledWidthMm()),
                millimetres("height", KitOptions.MOST_MM, old.drilledHeightMm()),
                millimetres("cloth-width", KitOptions.MOST_MM, old.clothWidthMm()),
                millimetres("cloth-height", KitOptions.MOST_MM, old.clothHeightMm()),
                millimetres("pitch", KitOptions.MOST_PITCH_MM, old.pitchMm()),
                whole("columns", old.columns()),
                whole("rows", old.rows()));
    }

    Kit over(Kit old) {
        return new Kit(
                old.title(),
                call.value("source").map(String::strip).or(old::source).filter(source -> !source.isEmpty()),
                over("ordered", () -> DateOption.of(call, "ordered"), old.orderedOn()),
                over("arrived", () -> DateOption.of(call, "arrived"), old.arrivedOn()),
                over("price", () -> KitOptions.money(call, "price"), old.price()),
                over("postage", () -> KitOptions.money(call, "postage"), old.postage()),
                old.keptAt(),
                old.pictures(),
                call.value("notes").map(String::strip).orElse(old.notes()));
    }

    private Optional<Integer> whole(String option, Optional<Integer> before) {
        return over(
                        option,
                        () -> WordOption.whole(call, option, 1, KitOptions.MOST_CELLS),
                        before.map(Integer::longValue))
                .map(Long::intValue);
    }

    private Optional<Double> millimetres(String option, double most, Optional<Double> before) {
        return over(option, () -> WordOption.millimetres(call, option, most), before);
    }

    private <T> Optional<T> over(String option, Supplier<Result<Optional<T>>> read, Optional<T> before) {
        Optional<String> written = call.value(option);
        if (written.isEmpty()) {
            return before;
        }
        if (written.get().isBlank()) {
            return Optional.empty();
        }
        Result<Optional<T>> result = read.get();
        if (result instanceof Result.Refused<Optional<T>> no) {
            misunderstood = misunderstood.or(() -> Optional.of(no.refusal().text()));
            return before;
        }
        return result.orThrow();
    }
}
