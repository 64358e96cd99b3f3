package org.glintery.demo;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.glintery.api.ledger.Amount;
import org.glintery.api.ledger.Body;
import org.glintery.api.ledger.Coating;
import org.glintery.api.ledger.Drill;
import org.glintery.api.ledger.LedgerAction;
import org.glintery.api.ledger.Reservation;
import org.glintery.api.ledger.Shape;
import org.glintery.api.ledger.Spot;
import org.glintery.api.stash.Standing;
import org.glintery.api.storage.Bag;
import org.glintery.api.storage.Holder;
import org.glintery.api.storage.KitUp;
import org.glintery.api.storage.Pocket;
import org.glintery.api.time.About;
import org.glintery.api.workshop.ChangeSet;

/** Where the drills are: what came with each kit, what is kitted up, what is on a canvas, what is left over. */
final class Drilling {
    private static final int REPAIR = 20;
    private static final long POCKET = 900;
    private static final int LIT_LINE = 6;

    private final Seeded seeded;
    private final ChangeSet.Builder change;
    private final List<UUID> cases = new ArrayList<>();
    private final List<List<Pocket>> pockets = new ArrayList<>();

    Drilling(Seeded seeded, ChangeSet.Builder change) {
        this.seeded = seeded;
        this.change = change;
    }

    void cases() {
        int[][] sizes = {{6, 8}, {6, 8}, {6, 8}, {6, 8}, {4, 7}, {4, 7}};
        for (int i = 0; i < sizes.length; i++) {
            List<Pocket> made = new ArrayList<>();
            for (int row = 0; row < sizes[i][0]; row++) {
                for (int column = 1; column <= sizes[i][1]; column++) {
                    made.add(new Pocket(
                            seeded.id(), (char) ('A' + row) + "" + column, Optional.of(POCKET), i == 5 && row == 3));
                }
            }
            cases.add(seeded.id());
            pockets.add(made);
            Optional<String> lent = i == 5 ? Optional.of("the club, until the next meeting") : Optional.empty();
            change.create(
                    Holder.TYPE,
                    cases.get(i),
                    new Holder(
                            "Case " + (char) ('A' + i), sizes[i][0], sizes[i][1], made, Optional.empty(), lent, ""));
        }
    }

    void supply(PieceInMaking piece, Course course) {
        Standing standing = piece.told().standing();
        boolean inHouse = standing == Standing.SHELVED || standing == Standing.ON_THE_BENCH
                || standing == Standing.RESTING || standing == Standing.MADE;
        if (piece.legend().isEmpty() || !inHouse) {
            return;
        }
        UUID bag = bag(piece.told().title(), piece.id(), false);
        Spot from = new Spot.InBag(bag);
        About arrived = About.on(course.arrived());
        Spot shop = new Spot.Boundary(Spot.Edge.SUPPLIER, Optional.of(Shelving.sourceOf(piece.told())));
        Map<Drill, Long> left = new LinkedHashMap<>();
        for (int i = 0; i < piece.legend().size(); i++) {
            move(piece.drill(i), shop, from, piece.supplied().get(i), "came with " + piece.told().title(), arrived);
            left.merge(piece.drill(i), piece.supplied().get(i), Long::sum);
        }
        if (standing == Standing.MADE) {
            finish(piece, from, About.on(course.last()));
        } else {
            left.forEach((drill, count) -> change.create(
                    Reservation.TYPE,
                    Reservation.idForPiece(piece.id(), drill),
                    new Reservation(drill, count, Reservation.FOR_PIECE, piece.id(), Optional.empty())));
            if (piece.told().inCase() > 0) {
                kitUp(piece, from, About.on(course.started()));
            }
        }
    }

    /** All on the canvas but the leftovers: some go into a repair packet, some into Case E, the rest stay in the bag. */
    private void finish(PieceInMaking piece, Spot bag, About on) {
        boolean packet = piece.made() % 2 == 0;
        UUID repair = packet ? bag("Repair packet of " + piece.told().title(), piece.id(), true) : null;
        for (int i = 0; i < piece.legend().size(); i++) {
            long needed = piece.legend().get(i).needed().orElseThrow();
            move(piece.drill(i), bag, new Spot.OnCanvas(piece.id()), needed, "laid", on);
            long over = piece.supplied().get(i) - needed;
            if (packet && over > 0) {
                move(piece.drill(i), bag, new Spot.InBag(repair), Math.min(REPAIR, over), "kept for repairs", on);
                over -= Math.min(REPAIR, over);
            }
            if (over > 0 && piece.made() == 13 && i < pockets.get(4).size()) {
                var pocket = new Spot.InPocket(cases.get(4), pockets.get(4).get(i).id());
                move(piece.drill(i), bag, pocket, over, "left over", on);
            }
        }
    }

    private void kitUp(PieceInMaking piece, Spot bag, About on) {
        int number = piece.told().inCase() - 1;
        List<KitUp.Seat> seats = new ArrayList<>();
        int next = 0;
        for (int i = 0; i < piece.legend().size() && next < pockets.get(number).size(); i++) {
            long left = piece.supplied().get(i);
            int later = piece.legend().size() - i - 1;
            boolean first = true;
            while (left > 0 && (first || pockets.get(number).size() - next > later) && next < pockets.get(number).size()) {
                var pocket = new Spot.InPocket(cases.get(number), pockets.get(number).get(next++).id());
                long taken = Math.min(left, POCKET);
                move(piece.drill(i), bag, pocket, taken, "kitted up", on);
                seats.add(new KitUp.Seat(piece.legend().get(i).symbol(), piece.drill(i), pocket));
                left -= taken;
                first = false;
            }
            if (left > 0) {
                seats.add(new KitUp.Seat(piece.legend().get(i).symbol(), piece.drill(i), bag));
            }
        }
        change.create(KitUp.TYPE, piece.id(), new KitUp(cases.get(number), seats, Optional.of(on), false));
    }

    /** Loose drills: square pearl from a swap, roughly counted metallic, and a jar nobody has counted. */
    void looseBags(List<PieceInMaking> pieces, About on) {
        // The lit windows want pearl of this shade, but as round drills: what is in the house is square.
        Drill square = coated(Told.LIT, LIT_LINE, Shape.SQUARE, Coating.PEARL, pieces);
        Spot pearl = new Spot.InBag(bag("Square pearl from the swap table", null, false));
        change.post(movement(square, Spot.SWAPPED, pearl, Amount.counted(340), "swapped", on));
        Drill gleam = coated(Told.WATERLINE, 0, Shape.SQUARE, Coating.METALLIC, pieces);
        Spot metallic = new Spot.InBag(bag("Metallic, half a bag", null, false));
        change.post(movement(gleam, Spot.SUPPLIER, metallic, Amount.rough(100, 30), "half a bag", on));
        Drill crystal = coated(Told.RELAY, 1, Shape.ROUND, Coating.AB, pieces);
        Spot jar = new Spot.InBag(bag("Jar by the lamp", null, false));
        change.post(movement(crystal, Spot.FOUND, jar, Amount.unknown(), "found, not counted yet", on));
    }

    /** A drill in the shade of a legend line of that piece, but of another shape or coating. */
    private static Drill coated(String title, int line, Shape shape, Coating coating, List<PieceInMaking> pieces) {
        Drill plain = pieces.stream()
                .filter(piece -> piece.told().title().equals(title))
                .findFirst()
                .orElseThrow()
                .drill(line);
        Body body = coating == Coating.AB ? Body.CRYSTAL : Body.RESIN;
        return new Drill(
                shape, Drill.usualSizeHundredths(shape), body, coating, Optional.empty(), DemoCard.NAME, plain.code());
    }

    private UUID bag(String name, UUID piece, boolean repair) {
        UUID id = seeded.id();
        Optional<UUID> of = Optional.ofNullable(piece);
        change.create(
                Bag.TYPE, id, new Bag(name, Optional.empty(), repair ? Optional.empty() : of, repair ? of : Optional.empty()));
        return id;
    }

    private void move(Drill drill, Spot from, Spot to, long count, String reason, About on) {
        if (count > 0) {
            change.post(movement(drill, from, to, Amount.counted(count), reason, on));
        }
    }

    private LedgerAction.Movement movement(Drill drill, Spot from, Spot to, Amount amount, String reason, About on) {
        return new LedgerAction.Movement(
                seeded.id(), drill, Optional.empty(), from, to, amount, reason, Optional.of(on), Optional.empty());
    }
}
