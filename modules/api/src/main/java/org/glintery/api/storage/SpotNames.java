package org.glintery.api.storage;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.UUID;
import org.glintery.api.MalformedException;
import org.glintery.api.PlainText;
import org.glintery.api.Result;
import org.glintery.api.Stable;
import org.glintery.api.internal.Wording;
import org.glintery.api.ledger.Spot;
import org.glintery.api.stash.Piece;
import org.glintery.api.workshop.ByName;
import org.glintery.api.workshop.Operation;
import org.glintery.api.workshop.Stored;
import org.glintery.api.workshop.View;

/**
 * Spots as people and scripts write them: {@code supplier}, {@code lost}, {@code swapped}, {@code found} (each also
 * with {@code :NAME}), {@code bag:NAME}, {@code pocket:HOLDER/NAME}, {@code canvas:PIECE}. Slash, colon and percent in
 * names are percent-encoded. Pure; any thread.
 */
@Stable
public final class SpotNames {
    private SpotNames() {}

    /**
     * A spot and what has to be put first so that it is there.
     *
     * @param toMake the bag document when the bag is named for the first time; else empty
     */
    public record Resolved(Spot spot, List<Operation> toMake) {
        public Resolved {
            toMake = List.copyOf(toMake);
        }
    }

    /** Refused with {@code not-a-spot}, {@code unknown-name} or {@code ambiguous-name}. A new bag is made. */
    public static Result<Resolved> resolve(View view, String written) {
        int colon = written.indexOf(':');
        String kind =
                (colon < 0 ? written : written.substring(0, colon)).strip().toLowerCase(Locale.ROOT);
        String rest = colon < 0 ? "" : written.substring(colon + 1).strip();
        switch (kind) {
            case "bag":
                return rest.isEmpty() ? notASpot(written) : bag(view, decoded(rest));
            case "pocket":
                return pocket(view, written, rest);
            case "canvas":
                return ByName.find(view, Piece.TYPE, Piece::title, decoded(rest))
                        .then(p -> there(new Spot.OnCanvas(p.id())));
            default:
                try {
                    return there(Spot.parse(colon < 0 ? kind : kind + ":" + rest));
                } catch (MalformedException e) {
                    return notASpot(written);
                }
        }
    }

    /** The spot as {@link #resolve} reads it. */
    public static String written(View view, Spot spot) {
        return written(view, spot, List.of());
    }

    /** @param making what a change is about to do: the bags that it makes have their names from there */
    public static String written(View view, Spot spot, List<? extends Operation> making) {
        if (spot instanceof Spot.InBag in) {
            return "bag:"
                    + Spot.encode(
                            bagName(view, in.bag(), making).orElse(in.bag().toString()));
        }
        if (spot instanceof Spot.InPocket in) {
            Optional<Holder> holder = view.find(Holder.TYPE, in.holder()).map(Stored::value);
            String name = holder.map(Holder::name).orElse(in.holder().toString());
            String pocket = pocketName(holder, in.pocket()).orElse(in.pocket().toString());
            return "pocket:" + Spot.encode(name) + "/" + Spot.encode(pocket);
        }
        if (spot instanceof Spot.OnCanvas on) {
            return "canvas:"
                    + Spot.encode(pieceTitle(view, on.piece()).orElse(on.piece().toString()));
        }
        return spot.toString();
    }

    /** The spot in words: "bag b1", "Case A, B4", "the canvas of Rope-walk", "a supplier". */
    public static String words(View view, Spot spot) {
        return words(view, spot, List.of());
    }

    /** @param making what a change is about to do: the bags that it makes have their names from there */
    public static String words(View view, Spot spot, List<? extends Operation> making) {
        if (spot instanceof Spot.InBag in) {
            return bagName(view, in.bag(), making)
                    .map(name -> text("bag", name))
                    .orElseGet(() -> text("bagGone"));
        }
        if (spot instanceof Spot.InPocket in) {
            Optional<Holder> holder = view.find(Holder.TYPE, in.holder()).map(Stored::value);
            return text(
                    "pocket",
                    holder.map(Holder::name).orElseGet(() -> text("holderGone")),
                    pocketName(holder, in.pocket()).orElseGet(() -> text("pocketGone")));
        }
        if (spot instanceof Spot.OnCanvas on) {
            return text("canvas", pieceTitle(view, on.piece()).orElseGet(() -> text("pieceGone")));
        }
        Spot.Boundary edge = (Spot.Boundary) spot;
        String base = text(
                switch (edge.edge()) {
                    case SUPPLIER -> "supplier";
                    case LOST -> "lost";
                    case FOUND -> "found";
                    case SWAPPED -> "swapped";
                });
        return edge.name().map(name -> text("named", base, name)).orElse(base);
    }

    private static String text(String key, String... values) {
        return Wording.of(SpotNames.class, key, values);
    }

    private static Result<Resolved> bag(View view, String name) {
        Result<Stored<Bag>> found = ByName.find(view, Bag.TYPE, Bag::name, name);
        if (found instanceof Result.Ok<Stored<Bag>> ok) {
            return there(new Spot.InBag(ok.value().id()));
        }
        if (found instanceof Result.Refused<Stored<Bag>> no
                && no.refusal().code().equals("ambiguous-name")) {
            return Result.refused(no.refusal());
        }
        UUID id = ByName.idFor(Bag.TYPE, name);
        if (view.find(Bag.TYPE, id).isPresent()) {
            id = UUID.randomUUID(); // that bag was renamed since: its first name is free again
        }
        return Result.ok(new Resolved(new Spot.InBag(id), List.of(new Operation.Put<>(Bag.TYPE, id, Bag.named(name)))));
    }

    private static Result<Resolved> pocket(View view, String written, String rest) {
        int slash = rest.indexOf('/');
        if (slash <= 0 || slash == rest.length() - 1) {
            return notASpot(written);
        }
        String pocketName = decoded(rest.substring(slash + 1));
        return ByName.find(view, Holder.TYPE, Holder::name, decoded(rest.substring(0, slash)))
                .then(holder -> {
                    for (Pocket pocket : holder.value().pockets()) {
                        if (pocket.name().equalsIgnoreCase(pocketName)
                                || pocket.id().toString().equals(pocketName)) {
                            return there(new Spot.InPocket(holder.id(), pocket.id()));
                        }
                    }
                    return Result.refused(
                            "unknown-name", text("noPocket", holder.value().name(), pocketName));
                });
    }

    private static Result<Resolved> there(Spot spot) {
        return Result.ok(new Resolved(spot, List.of()));
    }

    private static Result<Resolved> notASpot(String written) {
        return Result.refused("not-a-spot", text("notASpot", written));
    }

    private static String decoded(String name) {
        try {
            return PlainText.line(Spot.decode(name));
        } catch (IllegalArgumentException e) {
            return PlainText.line(name); // a lone percent sign: taken as it stands
        }
    }

    private static Optional<String> bagName(View view, UUID bag, List<? extends Operation> making) {
        for (Operation operation : making) {
            if (operation instanceof Operation.Put<?> put && put.id().equals(bag) && put.value() instanceof Bag made) {
                return Optional.of(made.name());
            }
        }
        return view.find(Bag.TYPE, bag).map(stored -> stored.value().name());
    }

    private static Optional<String> pocketName(Optional<Holder> holder, UUID pocket) {
        return holder.flatMap(h -> h.pockets().stream()
                .filter(p -> p.id().equals(pocket))
                .map(Pocket::name)
                .findFirst());
    }

    private static Optional<String> pieceTitle(View view, UUID piece) {
        return view.find(Piece.TYPE, piece).map(p -> p.value().title());
    }
}
