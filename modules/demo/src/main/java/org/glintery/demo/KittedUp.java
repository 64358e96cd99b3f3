package org.glintery.demo;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.glintery.api.ledger.Spot;
import org.glintery.api.storage.KitUp;
import org.glintery.api.time.About;
import org.glintery.api.workshop.ChangeSet;

/** Where the drills of each line of a legend lie. */
final class KittedUp {
    private final List<List<Heap>> lines;

    /** @param count how many lie there */
    record Heap(Spot spot, long count) {}

    private KittedUp(List<List<Heap>> lines) {
        this.lines = lines;
    }

    static KittedUp leftIn(Spot bag, int lines) {
        return new KittedUp(java.util.Collections.nCopies(lines, List.of(new Heap(bag, Long.MAX_VALUE))));
    }

    /** In symbol order: a pocket for each, more while each later symbol can still have its own; the rest stays in the bag. */
    static KittedUp into(Cases cases, PieceInMaking piece, Spot bag) {
        int number = piece.told().inCase();
        int count = piece.legend().size();
        List<List<Heap>> lines = new ArrayList<>();
        for (int line = 0; line < count; line++) {
            int later = count - line - 1;
            long left = piece.supplied(line).count().orElseThrow();
            List<Heap> heaps = new ArrayList<>();
            while (left > 0 && cases.free(number) > (heaps.isEmpty() ? 0 : later)) {
                long taken = Math.min(left, Cases.CAPACITY);
                heaps.add(new Heap(cases.next(number).orElseThrow(), taken));
                left -= taken;
            }
            if (left > 0) {
                heaps.add(new Heap(bag, left));
            }
            lines.add(heaps);
        }
        return new KittedUp(lines);
    }

    void book(ChangeSet.Builder change, Booking booking, Cases cases, PieceInMaking piece, Spot bag, LocalDate on) {
        List<KitUp.Seat> seats = new ArrayList<>();
        for (int line = 0; line < lines.size(); line++) {
            for (Heap heap : lines.get(line)) {
                String symbol = piece.legend().get(line).symbol();
                seats.add(new KitUp.Seat(symbol, piece.drill(line), heap.spot()));
                if (!heap.spot().equals(bag)) {
                    String reason = "kit up of " + piece.told().title();
                    booking.move(piece.drill(line), bag, heap.spot(), heap.count(), reason, on);
                }
            }
        }
        change.create(
                KitUp.TYPE,
                piece.id(),
                new KitUp(
                        cases.id(piece.told().inCase()),
                        seats,
                        Optional.of(About.on(on)),
                        piece.told().made()));
    }

    List<Heap> heaps(int line) {
        return lines.get(line);
    }
}
