package org.glintery.benchmarks.large;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.UUID;
import org.glintery.api.GlinteryException;
import org.glintery.api.activework.ActiveWork;
import org.glintery.api.activework.Completion;
import org.glintery.api.stash.LegendLine;
import org.glintery.api.stash.NewKit;
import org.glintery.api.stash.Standing;
import org.glintery.api.stash.Stash;
import org.glintery.api.time.About;
import org.glintery.api.workshop.ChangeSet;
import org.glintery.api.workshop.Operation;
import org.glintery.api.workshop.Settings;
import org.glintery.api.workshop.Workshop;

/**
 * Fills a new workshop as years of work would: kits are shelved, pieces are sat at by turns and completed, loose drills
 * are bought, each as a change of its own. The same seed gives the same kits, sittings and counts. One thread; disk.
 */
public final class LargeWorkshop {

    private static final LocalDate BEGAN = LocalDate.of(2012, 3, 1);
    private static final int KITS_A_WEEK = 7;
    /** A kit waits behind so many others before its piece is begun. */
    private static final int WAITING = 25;

    private static final int BATCH = 1_000;

    private final Workshop workshop;
    private final Size size;
    private final SplittableRandom random;
    private final Kits kits;
    private final Sittings sittings;
    private final LooseDrills loose;
    private final Stash stash;
    private final ActiveWork bench;
    private long movements;

    private record Waiting(UUID piece, List<LegendLine> legend, Fate fate, LocalDate since, int sittings) {}

    public LargeWorkshop(Workshop workshop, Size size, long seed) {
        this.workshop = workshop;
        this.size = size;
        random = new SplittableRandom(seed);
        kits = new Kits(random.split(), size.lines());
        sittings = new Sittings(random.split());
        loose = new LooseDrills(random.split());
        stash = needed(Stash.class);
        bench = needed(ActiveWork.class);
    }

    private <S> S needed(Class<S> service) {
        return workshop.find(service).orElseThrow(() -> new GlinteryException("no module brings " + service.getName()));
    }

    public void fill() {
        apply(ChangeSet.named("Choose the drills as well")
                .put(Settings.TYPE, Settings.ID, Settings.USUAL)
                .build());
        List<Fate> fates = fates();
        List<Integer> evenings = evenings(fates);
        List<Waiting> waiting = new ArrayList<>();
        for (int number = 0; number < size.kits(); number++) {
            waiting.add(shelve(number, fates.get(number), evenings.get(number)));
            if (number >= WAITING) {
                live(waiting.get(number - WAITING));
            }
        }
        waiting.subList(Math.max(0, size.kits() - WAITING), size.kits()).forEach(this::live);
        buyLoose();
    }

    private List<Fate> fates() {
        List<Fate> fates = new ArrayList<>();
        for (int i = 0; i < size.kits(); i++) {
            fates.add(Fate.of(random));
        }
        return fates;
    }

    /** Deals the sittings out evenly over the pieces that are worked at. */
    private List<Integer> evenings(List<Fate> fates) {
        int worked = (int) fates.stream().filter(Fate::isWorked).count();
        List<Integer> evenings = new ArrayList<>();
        int dealt = 0;
        int seen = 0;
        for (Fate fate : fates) {
            seen += fate.isWorked() ? 1 : 0;
            int until = worked == 0 ? 0 : (int) ((long) size.sittings() * seen / worked);
            evenings.add(fate.isWorked() ? until - dealt : 0);
            dealt = until;
        }
        return evenings;
    }

    private Waiting shelve(int number, Fate fate, int evenings) {
        LocalDate on = BEGAN.plusWeeks(number / KITS_A_WEEK);
        Standing standing = switch (fate) {
            case HOPED_FOR -> Standing.HOPED_FOR;
            case ORDERED -> Standing.ORDERED;
            case SHELVED, ON_THE_BENCH, RESTING, MADE -> Standing.SHELVED;
        };
        NewKit kit = kits.next(number, standing, on);
        apply(stash.shelve(workshop.view(), kit).orThrow());
        NewKit.NewPiece piece = kit.pieces().get(0);
        return new Waiting(piece.id(), piece.legend().lines(), fate, on, evenings);
    }

    private void live(Waiting piece) {
        LocalDate day = piece.since().plusDays(30);
        for (int i = 0; i < piece.sittings(); i++) {
            UUID id = new UUID(random.nextLong(), random.nextLong());
            apply(bench.sit(workshop.view(), id, sittings.next(piece.piece(), piece.legend(), day))
                    .orThrow());
            day = day.plusDays(1 + random.nextInt(4));
        }
        if (piece.fate() == Fate.MADE) {
            Optional<Integer> score = random.nextInt(4) == 0 ? Optional.empty() : Optional.of(1 + random.nextInt(5));
            apply(bench.complete(workshop.view(), new Completion(piece.piece(), About.on(day), score, ""))
                    .orThrow());
        } else if (piece.fate() == Fate.RESTING && piece.sittings() > 0) {
            apply(bench.rest(workshop.view(), piece.piece(), About.on(day)).orThrow());
        }
    }

    private void buyLoose() {
        if (movements > size.movements()) {
            throw new GlinteryException("more movements than wanted: " + movements);
        }
        apply(loose.bags());
        while (movements < size.movements()) {
            apply(loose.bought((int) Math.min(BATCH, size.movements() - movements)));
        }
    }

    private void apply(ChangeSet change) {
        workshop.apply(change).orThrow();
        movements += change.operations().stream()
                .filter(Operation.Post.class::isInstance)
                .count();
    }
}
