package org.glintery.testkit.contract;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.UUID;
import java.util.stream.IntStream;
import org.glintery.api.Json;
import org.glintery.api.workshop.ChangeSet;
import org.glintery.api.workshop.DocumentType;
import org.glintery.api.workshop.Operation;
import org.glintery.api.workshop.RawDocument;
import org.glintery.api.workshop.Stored;
import org.glintery.api.workshop.Workshop;
import org.glintery.testkit.FilledRecords;
import org.glintery.testkit.MemoryWorkshop;
import org.glintery.testkit.PlainCodec;
import org.glintery.testkit.guard.Guarded;
import org.junit.jupiter.api.Test;

/**
 * What every kind of document keeps: it goes into a workshop and comes out the same, of whatever version it was.
 *
 * @param <T> its record
 */
@Guarded
public abstract class DocumentTypeContract<T extends Record> {
    private static final UUID ID = new UUID(14, 1);
    private final PlainCodec codec = new PlainCodec();

    /**
     * A body as an earlier version wrote it.
     *
     * @param means what it has to be read as
     */
    public record Earlier<T>(int version, String json, T means) {}

    protected abstract DocumentType<T> type();

    /** One of each earlier version. */
    protected abstract List<Earlier<T>> earlier();

    /** A value in which no component has its default; to be given where the record's checks want a particular one. */
    protected T example() {
        return new FilledRecords().of(type().record());
    }

    @Test
    void hasAKeyThatCanStand() {
        assertThat(type().owner()).matches("[a-z]+(-[a-z]+)*");
        assertThat(type().name()).matches("[a-z]+(-[a-z]+)*");
    }

    @Test
    void comesBackAsItWas_alsoByWayOfAnotherWorkshop() {
        T value = example();
        try (Workshop first = new MemoryWorkshop();
                Workshop second = new MemoryWorkshop()) {
            first.apply(ChangeSet.named("put").create(type(), ID, value).build())
                    .orThrow();
            assertThat(read(first).value()).isEqualTo(value);
            RawDocument carried = first.view().documents().findFirst().orElseThrow();
            Json.Obj body = (Json.Obj) codec.parse(codec.pretty(carried.body()));
            put(second, new RawDocument(carried.ref(), carried.typeVersion(), body));
            assertThat(read(second).value()).isEqualTo(value);
            assertThat(read(second).readOnly()).isFalse();
        }
    }

    @Test
    void readsEveryEarlierVersion() {
        assertThat(earlier()).extracting(Earlier::version).containsExactlyInAnyOrderElementsOf(versionsBefore());
        for (Earlier<T> one : earlier()) {
            try (Workshop workshop = new MemoryWorkshop()) {
                put(workshop, new RawDocument(type().ref(ID), one.version(), (Json.Obj) codec.parse(one.json())));
                assertThat(read(workshop).value())
                        .as("version %d", one.version())
                        .isEqualTo(one.means());
            }
        }
    }

    private List<Integer> versionsBefore() {
        return IntStream.range(1, type().version()).boxed().toList();
    }

    @Test
    void keepsAField_thatALaterVersionAdded() {
        Json.Obj body = ((Json.Obj) codec.toJson(example())).with("addedLater", new Json.Text("kept"));
        try (Workshop workshop = new MemoryWorkshop()) {
            put(workshop, new RawDocument(type().ref(ID), type().version(), body));
            workshop.apply(ChangeSet.named("put")
                            .replace(type(), read(workshop), example())
                            .build())
                    .orThrow();
            assertThat(workshop.view()
                            .documents()
                            .findFirst()
                            .orElseThrow()
                            .body()
                            .text("addedLater"))
                    .contains("kept");
        }
    }

    private Stored<T> read(Workshop workshop) {
        return workshop.view().find(type(), ID).orElseThrow();
    }

    private static void put(Workshop workshop, RawDocument document) {
        workshop.apply(ChangeSet.named("bring")
                        .add(new Operation.PutRaw(document))
                        .build())
                .orThrow();
    }
}
