package org.glintery.api.storage;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import java.util.function.Predicate;
import org.glintery.api.Preview;
import org.glintery.api.ledger.Balance;
import org.glintery.api.ledger.Drill;
import org.glintery.api.ledger.Spot;
import org.glintery.api.stash.Piece;
import org.glintery.api.stash.Standing;
import org.glintery.api.workshop.Derived;
import org.glintery.api.workshop.View;

/** Where the drills of one piece lie, and which places are kept for something else. Reads only. Any thread. */
@Preview(since = "1.0")
public final class DrillPlaces {
    private static final Derived<Map<UUID, List<Spot>>> BAGS_BY_PIECE = DrillPlaces::bagsByPiece;
    private static final Derived<Map<Spot, Set<UUID>>> PIECES_BY_POCKET = DrillPlaces::piecesByPocket;
    private static final Derived<Map<Drill, Long>> IN_REPAIR_PACKETS = DrillPlaces::repairPackets;

    private final View view;
    private final UUID piece;
    private final List<KitUp.Seat> seats;

    public DrillPlaces(View view, UUID piece) {
        this.view = view;
        this.piece = piece;
        this.seats = KitUp.of(view, piece).map(KitUp::seats).orElse(List.of());
    }

    /** The bags that came with the piece, or were made for its kit, the oldest first. */
    public List<Spot> kitBags() {
        return view.derived(BAGS_BY_PIECE).getOrDefault(piece, List.of());
    }

    /** Where a maker takes a drill of the piece from: its pockets in symbol order, then the bags of its kit. */
    public Set<Spot> of(Drill drill) {
        Set<Spot> spots = new LinkedHashSet<>();
        seats.stream().filter(seat -> seat.drill().equals(drill)).forEach(seat -> spots.add(seat.spot()));
        spots.addAll(kitBags());
        return spots;
    }

    /** As for the drill, the symbol's own pockets first. */
    public Set<Spot> of(String symbol, Drill drill) {
        Set<Spot> spots = new LinkedHashSet<>();
        seats.stream()
                .filter(seat -> seat.drill().equals(drill) && seat.symbol().equals(symbol))
                .forEach(seat -> spots.add(seat.spot()));
        spots.addAll(of(drill));
        return spots;
    }

    /**
     * Whether what lies there is not for this piece: the bag of another kit until its piece is made, a pocket in which
     * another piece sits, or any repair packet.
     */
    public boolean isKeptForOthers(Spot spot) {
        if (spot instanceof Spot.InBag in) {
            return view.find(Bag.TYPE, in.bag())
                    .filter(bag -> isKeptForOthers(bag.value()))
                    .isPresent();
        }
        return pocketsSeated(view).getOrDefault(spot, Set.of()).stream().anyMatch(other -> !other.equals(piece));
    }

    /** Whether the spot is a packet of drills kept for repairs: in the house, but not for laying. */
    public static boolean isRepairPacket(View view, Spot spot) {
        return spot instanceof Spot.InBag in
                && view.find(Bag.TYPE, in.bag())
                        .filter(bag -> bag.value().repairFor().isPresent())
                        .isPresent();
    }

    /** How many of a drill lie in repair packets. */
    public static long inRepairPackets(View view, Drill drill) {
        return view.derived(IN_REPAIR_PACKETS).getOrDefault(drill, 0L);
    }

    /** What lies of a drill in bags and pockets. */
    public static Balance inTheHouse(View view, Drill drill) {
        return sum(view, drill, spot -> true);
    }

    /** The same without what is kept for repairs. While some of it is uncounted, nobody can say what is missing. */
    public static Balance forLaying(View view, Drill drill) {
        return sum(view, drill, spot -> !isRepairPacket(view, spot));
    }

    /** Whether no drill lies in a spot; what is left unsure of an emptied one is not a drill. */
    public static boolean isEmpty(View view, Spot spot) {
        return view.contents(spot).values().stream().allMatch(Balance::isEmpty);
    }

    /** The pockets in which pieces sit, with these pieces. */
    public static Map<Spot, Set<UUID>> pocketsSeated(View view) {
        return view.derived(PIECES_BY_POCKET);
    }

    private boolean isKeptForOthers(Bag bag) {
        return bag.repairFor().isPresent()
                || bag.ofPiece()
                        .filter(other -> !other.equals(piece))
                        .flatMap(other -> view.find(Piece.TYPE, other))
                        .map(other -> other.value().standing())
                        .filter(standing -> standing != Standing.MADE && standing != Standing.LET_GO)
                        .isPresent();
    }

    private static Map<Drill, Long> repairPackets(View view) {
        Map<Drill, Long> counts = new HashMap<>();
        view.all(Bag.TYPE).stream()
                .filter(bag -> bag.value().repairFor().isPresent())
                .flatMap(bag -> view.contents(new Spot.InBag(bag.id())).entrySet().stream())
                .forEach(in -> counts.merge(in.getKey(), in.getValue().count(), Long::sum));
        return counts;
    }

    private static Balance sum(View view, Drill drill, Predicate<Spot> counts) {
        return view.whereabouts(drill).entrySet().stream()
                .filter(lies -> lies.getKey().inTheHouse() && counts.test(lies.getKey()))
                .map(Map.Entry::getValue)
                .reduce(Balance.ZERO, Balance::plus);
    }

    private static Map<UUID, List<Spot>> bagsByPiece(View view) {
        Map<UUID, List<Spot>> bags = new HashMap<>();
        view.all(Bag.TYPE)
                .forEach(bag -> bag.value()
                        .ofPiece()
                        .ifPresent(of ->
                                bags.computeIfAbsent(of, p -> new ArrayList<>()).add(new Spot.InBag(bag.id()))));
        return bags;
    }

    private static Map<Spot, Set<UUID>> piecesByPocket(View view) {
        Map<Spot, Set<UUID>> pieces = new HashMap<>();
        view.all(KitUp.TYPE)
                .forEach(kitUp -> kitUp.value().seats().stream()
                        .map(KitUp.Seat::spot)
                        .filter(Spot.InPocket.class::isInstance)
                        .forEach(pocket -> pieces.computeIfAbsent(pocket, p -> new LinkedHashSet<>())
                                .add(kitUp.id())));
        return pieces;
    }
}
