package org.glintery.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.glintery.api.ledger.Amount;
import org.glintery.api.ledger.Drill;
import org.glintery.api.ledger.LedgerAction;
import org.glintery.api.ledger.LedgerEntry;
import org.glintery.api.ledger.Shape;
import org.glintery.api.ledger.Spot;
import org.glintery.api.time.About;
import org.glintery.api.workshop.Blob;
import org.glintery.api.workshop.ChangeSet;
import org.glintery.api.workshop.DocumentType;
import org.glintery.api.workshop.LedgerQuery;
import org.glintery.api.workshop.Picture;
import org.glintery.api.workshop.RawDocument;
import org.glintery.api.workshop.Reservation;
import org.glintery.api.workshop.Settings;
import org.glintery.api.workshop.Workshop;
import org.glintery.testkit.DocumentTypes;
import org.glintery.testkit.FilledRecords;

/** A workshop with a document of every kind in the API, every component filled, movements of every kind and pictures. */
public final class WholeWorkshop {
    static final Drill TAR = Drill.of(Shape.ROUND, 280, "own", "=T1");
    static final Spot BAG = new Spot.InBag(new UUID(5, 1));

    private WholeWorkshop() {}

    public static void fill(Workshop workshop) {
        Blob picture = Blob.of("image/png", new byte[] {(byte) 0x89, 'P', 'N', 'G', 13, 10, 26, 10, 0, 1, 2});
        Blob other = Blob.of("application/x-own", new byte[] {0, -1, 7});
        Reservation setAside =
                new Reservation(TAR, 80, "=piece", new UUID(6, 6), Optional.of(LocalDate.of(2093, 1, 2)));
        ChangeSet.Builder change = ChangeSet.named("Fill").blob(picture).blob(other);
        movements(change);
        var records = new FilledRecords().with(Picture.class, "hash", picture.hash());
        for (DocumentType<?> type : DocumentTypes.ofTheApi()) {
            for (int i = 0; i < 3; i++) {
                put(change, type, new UUID(50, i), type == Reservation.TYPE ? setAside : records.of(type.record()));
                if (type == Reservation.TYPE || type == Settings.TYPE) {
                    break;
                }
            }
        }
        workshop.apply(change.build()).orThrow();
        lose(workshop);
    }

    private static <T extends Record> void put(ChangeSet.Builder change, DocumentType<T> type, UUID id, Record value) {
        change.create(type, id, type.record().cast(value));
    }

    private static void movements(ChangeSet.Builder change) {
        Drill gleam = new FilledRecords().of(Drill.class);
        Optional<About> day = About.edtf("2024-05~");
        change.post(new LedgerAction.Movement(
                new UUID(9, 1),
                TAR,
                Optional.of("lot \"7\", late"),
                new Spot.Boundary(Spot.Edge.SUPPLIER, Optional.of("Quay: shop/2")),
                BAG,
                Amount.counted(100),
                "bought",
                day,
                Optional.empty()));
        change.post(LedgerAction.Movement.of(
                new UUID(9, 2),
                gleam,
                Spot.SWAPPED,
                new Spot.InPocket(new UUID(5, 2), new UUID(5, 3)),
                Amount.unknown(),
                ""));
        change.post(new LedgerAction.Stocktake(
                new UUID(9, 3),
                gleam,
                new Spot.InPocket(new UUID(5, 2), new UUID(5, 3)),
                Amount.rough(40, 6),
                "+looked",
                day,
                Optional.empty()));
        change.post(new LedgerAction.Reversal(
                new UUID(9, 4), new UUID(9, 3), "@wrong pocket", Optional.empty(), Optional.empty()));
    }

    /** Leaves less than is set aside: only a loss may, and an import has to bring it along. */
    private static void lose(Workshop workshop) {
        workshop.apply(ChangeSet.named("Lose")
                        .post(LedgerAction.Movement.of(
                                new UUID(9, 5), TAR, BAG, Spot.LOST, Amount.counted(50), "spilled"))
                        .build())
                .orThrow();
        assertThat(workshop.view().available(TAR)).isNegative();
    }

    /** Everything of two workshops is the same: documents, movements with their times, pictures with their bytes. */
    public static void assertEqual(Workshop first, Workshop second) {
        assertThat(second.view().documents().map(RawDocument::toString).toList())
                .isEqualTo(first.view().documents().map(RawDocument::toString).toList());
        assertThat(second.view().putOrder()).isEqualTo(first.view().putOrder());
        assertThat(movements(second)).isEqualTo(movements(first));
        assertThat(second.view().blobs()).isEqualTo(first.view().blobs());
        first.view()
                .blobs()
                .keySet()
                .forEach(hash -> assertThat(second.blob(hash).orElseThrow())
                        .isEqualTo(first.blob(hash).orElseThrow()));
        assertThat(second.view().contentDigest()).isEqualTo(first.view().contentDigest());
        assertThat(second.check().problems()).isEmpty();
    }

    private static List<List<Object>> movements(Workshop workshop) {
        List<List<Object>> all = new ArrayList<>();
        workshop.ledger(
                LedgerQuery.all(),
                (LedgerEntry entry) -> all.add(List.of(
                        entry.sequence(),
                        entry.action(),
                        entry.drill(),
                        entry.from(),
                        entry.to(),
                        entry.count(),
                        entry.recordedAt())));
        return all;
    }
}
