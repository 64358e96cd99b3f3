package org.glintery.records;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.glintery.api.ledger.Amount;
import org.glintery.api.ledger.LedgerAction;
import org.glintery.api.ledger.LedgerEntry;
import org.glintery.api.ledger.Spot;
import org.glintery.api.workshop.Blob;
import org.glintery.api.workshop.ChangeSet;
import org.glintery.api.workshop.DocumentType;
import org.glintery.api.workshop.LedgerQuery;
import org.glintery.api.workshop.Reservation;
import org.glintery.api.workshop.Workshop;
import org.glintery.testkit.DocumentTypes;
import org.glintery.testkit.FilledRecords;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Nothing is lost on the way to disk, into an export and back, whatever a record holds. */
class EveryFieldTest {
    private static final UUID ID = new UUID(5, 5);

    @TempDir
    Path temp;

    private final H2Workshops workshops = new H2Workshops();
    private final JacksonCodec codec = new JacksonCodec();
    private final FilledRecords filled = new FilledRecords();

    static List<DocumentType<?>> types() {
        List<DocumentType<?>> types = DocumentTypes.ofTheApi();
        assertThat(types).hasSizeGreaterThanOrEqualTo(17);
        return types;
    }

    @ParameterizedTest
    @MethodSource("types")
    <T extends Record> void readsBackWhatWasWritten(DocumentType<T> type) {
        T value = filled.of(type.record());
        String text = codec.pretty(codec.toJson(value));
        assertThat(codec.fromJson(codec.parse(text), type.record())).as(text).isEqualTo(value);
        assertThat(codec.parse(codec.compact(codec.parse(text)))).isEqualTo(codec.parse(text));
    }

    @ParameterizedTest
    @MethodSource("types")
    <T extends Record> void carriesADocumentThroughDiskAndExport(DocumentType<T> type) {
        T value = filled.of(type.record());
        Path export = temp.resolve("export.json");
        try (Workshop first = workshops.create(temp.resolve("first")).orThrow()) {
            var change = ChangeSet.named("put").create(type, ID, value);
            if (value instanceof Reservation reservation) {
                change.post(LedgerAction.Movement.of(
                        ID, reservation.drill(), Spot.SUPPLIER, new Spot.InBag(ID), Amount.counted(5_000), "bought"));
            }
            first.apply(change.build()).orThrow();
        }
        try (Workshop first = workshops.open(temp.resolve("first")).orThrow()) {
            assertThat(first.view().find(type, ID).orElseThrow().value()).isEqualTo(value);
            first.exportJson(export).orThrow();
        }
        try (Workshop second = workshops.create(temp.resolve("second")).orThrow()) {
            second.importJson(export).orThrow();
            assertThat(second.view().find(type, ID).orElseThrow().value()).isEqualTo(value);
        }
    }

    @Test
    void carriesEveryKindOfActionThroughDiskAndExport() {
        var movement =
                filled.with(LedgerAction.Movement.class, "from", Spot.SUPPLIER).of(LedgerAction.Movement.class);
        var stocktake = new LedgerAction.Stocktake(
                new UUID(5, 6),
                movement.drill(),
                movement.to(),
                Amount.rough(30, 4),
                "counted",
                movement.happenedOn(),
                movement.recordedAt());
        var reversal = new LedgerAction.Reversal(
                new UUID(5, 7), stocktake.id(), "counted wrongly", movement.happenedOn(), movement.recordedAt());
        List<LedgerAction> asked = List.of(movement, stocktake, reversal);
        Path export = temp.resolve("export.json");
        try (Workshop first = workshops.create(temp.resolve("first")).orThrow();
                Workshop second = workshops.create(temp.resolve("second")).orThrow()) {
            var change = ChangeSet.named("post").blob(Blob.of("image/png", new byte[] {1, 2, 3}));
            asked.forEach(change::post);
            first.apply(change.build()).orThrow();
            assertThat(actions(first)).isEqualTo(asked);
            first.exportJson(export).orThrow();
            second.importJson(export).orThrow();
            assertThat(actions(second)).isEqualTo(asked);
            assertThat(second.view().contentDigest()).isEqualTo(first.view().contentDigest());
            assertThat(second.view().blobs()).isEqualTo(first.view().blobs()).hasSize(1);
        }
    }

    @Test
    void keepsARepeatedTakingBackExact_inAnExport_whenACountLiesBetween() {
        var bag = new Spot.InBag(ID);
        var drill = filled.of(org.glintery.api.ledger.Drill.class);
        var bought =
                LedgerAction.Movement.of(new UUID(6, 1), drill, Spot.SUPPLIER, bag, Amount.rough(100, 10), "bought");
        var counted = new LedgerAction.Stocktake(
                new UUID(6, 2), drill, bag, Amount.counted(120), "counted", Optional.empty(), Optional.empty());
        var wrong = new LedgerAction.Reversal(new UUID(6, 3), bought.id(), "wrong", Optional.empty(), Optional.empty());
        Path export = temp.resolve("export.json");
        try (Workshop first = workshops.create(temp.resolve("first")).orThrow();
                Workshop second = workshops.create(temp.resolve("second")).orThrow()) {
            String empty = first.view().contentDigest();
            first.apply(ChangeSet.named("buy").post(bought).build()).orThrow();
            first.apply(ChangeSet.named("count").post(counted).build()).orThrow();
            first.apply(ChangeSet.named("take back").post(wrong).build()).orThrow();
            first.undo().orThrow();
            first.undo().orThrow();
            first.undo().orThrow();
            assertThat(first.view().contentDigest()).isEqualTo(empty);
            first.exportJson(export).orThrow();
            second.importJson(export).orThrow();
            assertThat(second.view().contentDigest()).isEqualTo(empty);
            assertThat(actions(second)).isEqualTo(actions(first)).hasSize(6);
            assertThat(second.view().balance(Spot.SUPPLIER, drill))
                    .isEqualTo(first.view().balance(Spot.SUPPLIER, drill));
        }
    }

    private static List<LedgerAction> actions(Workshop of) {
        List<LedgerAction> actions = new ArrayList<>();
        of.ledger(LedgerQuery.all(), (LedgerEntry entry) -> actions.add(entry.action()));
        return actions;
    }
}
