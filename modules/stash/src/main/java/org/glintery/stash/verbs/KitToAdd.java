package org.glintery.stash.verbs;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.glintery.api.Result;
import org.glintery.api.exchange.KitFiles;
import org.glintery.api.exchange.LegendReader;
import org.glintery.api.exchange.LegendReader.Assumed;
import org.glintery.api.exchange.LegendReader.Reading;
import org.glintery.api.ledger.Shape;
import org.glintery.api.stash.CardEntry;
import org.glintery.api.stash.ColourCard;
import org.glintery.api.stash.Legend;
import org.glintery.api.stash.LegendLine;
import org.glintery.api.stash.NewKit;
import org.glintery.api.stash.Source;
import org.glintery.api.storage.KeepingPlaces;
import org.glintery.api.verb.VerbCall;
import org.glintery.api.workshop.Blob;
import org.glintery.api.workshop.Operation;
import org.glintery.api.workshop.Picture;
import org.glintery.stash.BagSize;
import org.openide.util.NbBundle.Messages;

/**
 * A kit as the command line describes it: by a kit file, or by options and a legend.
 *
 * @param reading what was understood of a legend; empty without one
 * @param making makes the place where it is kept, when that is new
 */
record KitToAdd(NewKit kit, Optional<Reading> reading, List<Operation> making) {

    @Messages("KitToAdd.both=Give a kit as JSON or a legend, not both.")
    static Result<KitToAdd> from(VerbCall call) {
        Optional<String> file = call.value("file");
        boolean json = file.filter(name -> name.toLowerCase(Locale.ROOT).endsWith(".json"))
                .isPresent();
        Optional<String> kitFile = call.value("json-file").or(() -> json ? file : Optional.empty());
        Optional<String> legend = call.value("legend").or(() -> json ? Optional.empty() : file);
        if (kitFile.isPresent() && legend.isPresent()) {
            return Result.refused(WordOption.USAGE, Bundle.KitToAdd_both());
        }
        return kitFile.isPresent() ? kitFile(call, call.path(kitFile.get())) : described(call, legend.map(call::path));
    }

    @Messages("KitToAdd.noKitFiles=Reading kit files needs the exchange part, which is switched off.")
    private static Result<KitToAdd> kitFile(VerbCall call, Path path) {
        return call.workshop()
                .find(KitFiles.class)
                .map(files -> files.read(path))
                .orElseGet(() -> needsExchange(Bundle.KitToAdd_noKitFiles()))
                .then(kit -> Result.ok(new KitToAdd(kit, Optional.empty(), List.of())));
    }

    @Messages("KitToAdd.nothing=Give a --title, a --legend FILE.csv or a kit as JSON.")
    private static Result<KitToAdd> described(VerbCall call, Optional<Path> legend) {
        Optional<String> title = call.value("title").or(() -> legend.map(KitToAdd::titleOf));
        if (title.filter(t -> !t.isBlank()).isEmpty()) {
            return Result.refused(WordOption.USAGE, Bundle.KitToAdd_nothing());
        }
        KitOptions options = new KitOptions(call, title.get());
        return reading(call, legend)
                .then(reading -> CoverPicture.of(call).then(cover -> built(call, options, reading, cover)));
    }

    private static Result<KitToAdd> built(
            VerbCall call, KitOptions options, Optional<Reading> reading, Optional<Blob> cover) {
        UUID id = UUID.randomUUID();
        List<Picture> pictures = cover.map(blob -> List.of(new Picture(blob.hash(), blob.mediaType(), "")))
                .orElse(List.of());
        return options.kit(pictures)
                .then(kit -> options.piece(id, pictures)
                        .then(piece -> lines(call, reading).then(lines -> {
                            Map<String, Map<String, CardEntry>> cards = reading.map(
                                            read -> Map.of(card(call), read.entries()))
                                    .orElse(Map.of());
                            List<Blob> blobs = cover.map(List::of).orElse(List.of());
                            Optional<KeepingPlaces.Named> place = KeepingPlaces.named(
                                    call.workshop().view(),
                                    call.value("kept-at").orElse(""));
                            NewKit.NewPiece only = new NewKit.NewPiece(
                                    UUID.randomUUID(),
                                    piece.withKeptAt(place.map(KeepingPlaces.Named::id)),
                                    Legend.of(lines));
                            return Result.ok(new KitToAdd(
                                    new NewKit(id, kit, List.of(only), cards, blobs),
                                    reading,
                                    place.map(KeepingPlaces.Named::making).orElse(List.of())));
                        })));
    }

    private static Result<List<LegendLine>> lines(VerbCall call, Optional<Reading> reading) {
        List<LegendLine> lines = reading.map(Reading::lines).orElse(List.of());
        return bagSize(call)
                .then(size -> size.map(drills -> BagSize.told(lines, drills)).orElseGet(() -> Result.ok(lines)));
    }

    /** What one bag of the kit's source holds, where it is said. */
    static Result<Optional<Integer>> bagSize(VerbCall call) {
        return WordOption.whole(call, "bag-size", 1, 1_000_000).then(size -> Result.ok(size.map(Long::intValue)));
    }

    @Messages("KitToAdd.noLegends=Reading legends needs the exchange part, which is switched off.")
    private static Result<Optional<Reading>> reading(VerbCall call, Optional<Path> legend) {
        if (legend.isEmpty()) {
            return Result.ok(Optional.empty());
        }
        return bagSize(call)
                .then(size -> WordOption.word(call, "shape", Shape.class)
                        .then(shape -> call.workshop()
                                .find(LegendReader.class)
                                .map(reader -> reader.read(
                                        legend.get(), new Assumed(card(call), shape, drillsPerBag(call, size))))
                                .orElseGet(() -> needsExchange(Bundle.KitToAdd_noLegends()))
                                .then(reading -> withLines(legend.get(), reading))));
    }

    private static int drillsPerBag(VerbCall call, Optional<Integer> told) {
        return told.orElseGet(() -> Source.drillsPerBag(call.workshop().view(), call.value("source")));
    }

    @Messages({
        "# {0} - file",
        "KitToAdd.noLine={0} is a legend without a line. Nothing was imported; give the kit a --title alone if its legend is to follow."
    })
    private static Result<Optional<Reading>> withLines(Path legend, Reading reading) {
        return reading.lines().isEmpty() && reading.badRows().isEmpty()
                ? Result.refused("no-line", Bundle.KitToAdd_noLine(legend.getFileName()))
                : Result.ok(Optional.of(reading));
    }

    private static String card(VerbCall call) {
        return call.value("card").orElse(ColourCard.OWN);
    }

    private static String titleOf(Path legend) {
        String name = legend.getFileName()
                .toString()
                .replaceFirst("\\.[^.]{1,5}$", "")
                .replace('_', ' ')
                .strip();
        return name.isEmpty() ? "" : name.substring(0, 1).toUpperCase(Locale.ROOT) + name.substring(1);
    }

    private static <T> Result<T> needsExchange(String text) {
        return Result.refused(WordOption.USAGE, text);
    }
}
