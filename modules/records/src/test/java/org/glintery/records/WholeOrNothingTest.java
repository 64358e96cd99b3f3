package org.glintery.records;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.SQLException;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import java.util.concurrent.CompletableFuture;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.glintery.api.Json;
import org.glintery.api.Result;
import org.glintery.api.ledger.Amount;
import org.glintery.api.ledger.LedgerAction;
import org.glintery.api.ledger.Spot;
import org.glintery.api.stash.Kit;
import org.glintery.api.workshop.Applied;
import org.glintery.api.workshop.Blob;
import org.glintery.api.workshop.ChangeSet;
import org.glintery.api.workshop.DocumentType;
import org.glintery.api.workshop.Operation;
import org.glintery.api.workshop.RawDocument;
import org.glintery.api.workshop.Stored;
import org.glintery.api.workshop.Workshop;
import org.glintery.testkit.LedgerWork;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Changes are made whole or not at all; documents keep what their owner does not know. */
class WholeOrNothingTest {
    private static final UUID ID = new UUID(9, 9);
    private static final Spot BAG = LedgerWork.SPOTS.get(0);

    record Inner(String word) {}

    record Note(String text, Inner inner) {}

    record LongerNote(String title, Inner inner) {}

    private static final DocumentType<Note> NOTE = DocumentType.of("test", "note", Note.class);
    private static final UnaryOperator<Json.Obj> RENAMED =
            body -> body.with("title", body.get("text").orElseThrow()).without("text");
    private static final DocumentType<LongerNote> NOTE_2 =
            new DocumentType<>("test", "note", 2, LongerNote.class, List.of(RENAMED));

    @TempDir
    Path temp;

    private final H2Workshops workshops = new H2Workshops(Clock.systemUTC(), new Faulty());
    private int faultAt = -1;
    private ChangeMaking.Writing faultBefore;
    private Fault fault;
    private Workshop workshop;

    @BeforeEach
    void make() {
        workshop = workshops.create(temp.resolve("w")).orThrow();
    }

    /** Goes wrong where it is told to. */
    private final class Faulty implements ChangeMaking.StepWatch {
        @Override
        public void before(int place) {
            if (place == faultAt) {
                throw new IllegalStateException("a fault before step " + place);
            }
        }

        @Override
        public void before(ChangeMaking.Writing writing) throws SQLException, IOException {
            if (writing == faultBefore) {
                fault.come();
            }
        }
    }

    /** What goes wrong. */
    enum Fault {
        OF_THE_DISK,
        OF_THE_DATABASE,
        OF_OURS;

        void come() throws SQLException, IOException {
            switch (this) {
                case OF_THE_DISK -> throw new IOException("No space left on device");
                case OF_THE_DATABASE -> throw new SQLException("no space left on the disk");
                default -> throw new IllegalStateException("a mistake");
            }
        }
    }

    @AfterEach
    void close() {
        workshop.close();
    }

    private static String code(Result<?> result) {
        return result instanceof Result.Refused<?> refused ? refused.refusal().code() : "ok";
    }

    private ChangeSet mixed() {
        return ChangeSet.named("Mixed")
                .create(Kit.TYPE, UUID.randomUUID(), Kit.titled("Crane"))
                .post(LedgerAction.Movement.of(
                        UUID.randomUUID(), LedgerWork.DRILLS.get(0), Spot.SUPPLIER, BAG, Amount.rough(9, 3), "bought"))
                .blob(Blob.of("image/png", new byte[] {4, 4}))
                .remove(Kit.TYPE.ref(ID))
                .build();
    }

    @Test
    void leavesEverythingAsItWas_whenAFaultComesBeforeAnyStep() {
        workshop.apply(ChangeSet.named("first")
                        .create(Kit.TYPE, ID, Kit.titled("Ferry"))
                        .build())
                .orThrow();
        String before = workshop.view().contentDigest();
        int steps = mixed().operations().size();
        for (faultAt = 0; faultAt < steps; faultAt++) {
            assertThatThrownBy(() -> workshop.apply(mixed())).hasMessage("a fault before step " + faultAt);
            assertThat(workshop.view().contentDigest()).isEqualTo(before);
            assertThat(workshop.check().problems()).isEmpty();
        }
        workshop.apply(mixed()).orThrow();
        assertThat(workshop.view().contentDigest()).isNotEqualTo(before);
        workshop.undo().orThrow();
        assertThat(workshop.view().contentDigest()).isEqualTo(before);
    }

    @ParameterizedTest
    @EnumSource
    void leavesEverythingAsItWas_whenAFaultComesBeforeAnyWriting(ChangeMaking.Writing writing) throws IOException {
        workshop.apply(ChangeSet.named("first")
                        .create(Kit.TYPE, ID, Kit.titled("Ferry"))
                        .blob(Blob.of("image/png", new byte[] {5}))
                        .build())
                .orThrow();
        String before = workshop.view().contentDigest();
        List<Path> pictures = pictures();
        for (Fault each : Fault.values()) {
            faultBefore = writing;
            fault = each;
            if (each == Fault.OF_OURS) {
                assertThatThrownBy(() -> workshop.apply(mixed())).hasMessage("a mistake");
            } else {
                assertThat(code(workshop.apply(mixed()))).isEqualTo("disk-full");
            }
            faultBefore = null;
            assertThat(workshop.view().contentDigest()).isEqualTo(before);
            workshop.close();
            workshop = workshops.open(temp.resolve("w")).orThrow();
            assertThat(workshop.view().contentDigest()).as("opened again").isEqualTo(before);
            assertThat(workshop.check().problems()).isEmpty();
            assertThat(pictures()).isEqualTo(pictures);
        }
        workshop.apply(mixed()).orThrow();
        assertThat(workshop.view().contentDigest()).isNotEqualTo(before);
        assertThat(pictures()).hasSize(pictures.size() + 1);
    }

    private List<Path> pictures() throws IOException {
        try (Stream<Path> files = Files.list(temp.resolve("w").resolve(BlobFolder.NAME))) {
            return files.sorted().toList();
        }
    }

    @Test
    void refusesAChangeThatWasMadeBefore_andOneComputedFromSomethingOlder() {
        var change = ChangeSet.named("first")
                .create(Kit.TYPE, ID, Kit.titled("Ferry"))
                .build();
        workshop.apply(change).orThrow();
        assertThat(code(workshop.apply(change))).isEqualTo("change-repeated");
        Stored<Kit> seen = workshop.view().find(Kit.TYPE, ID).orElseThrow();
        workshop.apply(ChangeSet.named("b")
                        .replace(Kit.TYPE, seen, Kit.titled("B"))
                        .build())
                .orThrow();
        assertThat(code(workshop.apply(ChangeSet.named("c")
                        .replace(Kit.TYPE, seen, Kit.titled("C"))
                        .build())))
                .isEqualTo("out-of-date");
        assertThat(workshop.view().find(Kit.TYPE, ID).orElseThrow().version()).isEqualTo(2);
        workshop.apply(ChangeSet.named("d").remove(Kit.TYPE.ref(ID)).build()).orThrow();
        workshop.apply(ChangeSet.named("e")
                        .create(Kit.TYPE, ID, Kit.titled("E"))
                        .build())
                .orThrow();
        assertThat(code(workshop.apply(ChangeSet.named("f")
                        .replace(Kit.TYPE, seen, Kit.titled("F"))
                        .build())))
                .as("a document that was removed and made anew is not the one that was seen")
                .isEqualTo("out-of-date");
    }

    @Test
    void refusesADocumentOfMoreThanAMebibyte() {
        String half = "x".repeat(PreparedBodyLimit.HALF);
        assertThat(code(workshop.apply(ChangeSet.named("a")
                        .put(NOTE, ID, new Note(half, new Inner("")))
                        .build())))
                .isEqualTo("ok");
        assertThat(code(workshop.apply(ChangeSet.named("a")
                        .put(NOTE, ID, new Note(half + half, new Inner("")))
                        .build())))
                .isEqualTo("too-large");
    }

    private static final class PreparedBodyLimit {
        private static final int HALF = DocumentSteps.MOST_BYTES / 2;
    }

    @Test
    void keepsFieldsItDoesNotKnow_alsoWhenTheBodyIsRaisedToANewerVersion() {
        Json.Obj inner = Json.EMPTY.with("word", new Json.Text("in")).with("hue", Json.Num.of(7));
        Json.Obj body = Json.EMPTY
                .with("text", new Json.Text("out"))
                .with("inner", inner)
                .with("extra", new Json.Flag(true));
        var raw = new Operation.PutRaw(new RawDocument(NOTE.ref(ID), 1, body));
        workshop.apply(ChangeSet.named("raw").add(raw).build()).orThrow();
        workshop.apply(ChangeSet.named("put")
                        .put(NOTE, ID, new Note("new", new Inner("newer")))
                        .build())
                .orThrow();
        assertThat(body())
                .isEqualTo(body.with("text", new Json.Text("new"))
                        .with("inner", inner.with("word", new Json.Text("newer"))));
        assertThat(workshop.view().find(NOTE_2, ID).orElseThrow().value())
                .isEqualTo(new LongerNote("new", new Inner("newer")));
        workshop.apply(ChangeSet.named("two")
                        .put(NOTE_2, ID, new LongerNote("t", new Inner("i")))
                        .build())
                .orThrow();
        assertThat(body().fields()).containsOnlyKeys("title", "inner", "extra");
        assertThat(((Json.Obj) body().get("inner").orElseThrow()).fields()).containsEntry("hue", Json.Num.of(7));
        assertThat(workshop.view().find(NOTE_2, ID).orElseThrow().readOnly()).isFalse();
        assertThat(code(workshop.apply(ChangeSet.named("old")
                        .put(NOTE, ID, new Note("old", new Inner("")))
                        .build())))
                .isEqualTo("newer");
    }

    private Json.Obj body() {
        return workshop.view()
                .documents()
                .filter(d -> d.ref().equals(NOTE.ref(ID)))
                .findFirst()
                .orElseThrow()
                .body();
    }

    @Test
    void refusesWhatWouldNoLongerFitIntoItsNumbers() {
        List<String> codes = new ArrayList<>();
        for (int i = 0; i < 12; i++) {
            codes.add(code(workshop.apply(ChangeSet.named("huge")
                    .post(LedgerAction.Movement.of(
                            UUID.randomUUID(),
                            LedgerWork.DRILLS.get(0),
                            Spot.SUPPLIER,
                            BAG,
                            Amount.rough(Amount.MOST, Amount.MOST),
                            "far too much"))
                    .build())));
        }
        assertThat(codes.subList(0, 9)).containsOnly("ok");
        assertThat(codes.subList(9, 12)).containsOnly("overflow");
        assertThat(workshop.check().problems()).isEmpty();
    }

    @Test
    void makesChangesInTheOrderTheyWereHandedOver() {
        List<CompletableFuture<Result<Applied>>> handed = new ArrayList<>();
        for (int i = 0; i < 200; i++) {
            handed.add(workshop.submit(ChangeSet.named("n")
                            .put(NOTE, ID, new Note("n" + i, new Inner("")))
                            .build())
                    .toCompletableFuture());
        }
        for (int i = 0; i < 200; i++) {
            assertThat(handed.get(i).join().orThrow().revision()).isEqualTo(i + 1);
        }
        assertThat(workshop.view().find(NOTE, ID).orElseThrow().value().text()).isEqualTo("n199");
    }

    @Test
    void saysAfterwardsThatItIsClosed() {
        workshop.close();
        workshop.close();
        assertThat(code(workshop.apply(mixed()))).isEqualTo("closed");
        assertThat(code(workshop.submit(mixed()).toCompletableFuture().join())).isEqualTo("closed");
        assertThat(workshop.view().revision()).isZero();
    }
}
