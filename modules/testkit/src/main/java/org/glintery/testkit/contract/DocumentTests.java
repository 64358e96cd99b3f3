package org.glintery.testkit.contract;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.glintery.api.Json;
import org.glintery.api.workshop.ChangeSet;
import org.glintery.api.workshop.Derived;
import org.glintery.api.workshop.DocRef;
import org.glintery.api.workshop.Operation;
import org.glintery.api.workshop.Precondition;
import org.glintery.api.workshop.RawDocument;
import org.glintery.api.workshop.Stored;
import org.glintery.api.workshop.View;
import org.junit.jupiter.api.Test;

/** Documents: versions, upcasting, fields that nobody knows, and changes computed from what no longer stands. */
abstract class DocumentTests extends WorkshopContract.Part {
    private static final UUID ID = new UUID(11, 1);
    private static final DocRef REF = Gauge.First.TYPE.ref(ID);

    private ChangeSet.Builder change() {
        return ChangeSet.named("Change the gauge");
    }

    private Stored<Gauge.First> stored() {
        return view().find(Gauge.First.TYPE, ID).orElseThrow();
    }

    @Test
    void findsWhatWasPut_inTheOrderItCame() {
        UUID other = new UUID(1, 1);
        apply(change().create(Gauge.First.TYPE, ID, new Gauge.First(3)));
        apply(change().create(Gauge.First.TYPE, other, new Gauge.First(4)));
        apply(change().replace(Gauge.First.TYPE, stored(), new Gauge.First(5)));

        assertThat(stored()).isEqualTo(new Stored<>(ID, 2, new Gauge.First(5), false));
        assertThat(view().all(Gauge.First.TYPE)).extracting(Stored::id).containsExactly(ID, other);
        assertThat(view().putOrder()).containsExactly(REF, Gauge.First.TYPE.ref(other));
        assertThat(view().documents().map(RawDocument::ref)).containsExactly(Gauge.First.TYPE.ref(other), REF);
        assertThat(view().find(Gauge.First.TYPE, new UUID(9, 9))).isEmpty();
    }

    @Test
    void refusesAChange_thatWasComputedFromWhatNoLongerStands() {
        apply(change().create(Gauge.First.TYPE, ID, new Gauge.First(3)));
        Stored<Gauge.First> old = stored();
        apply(change().put(Gauge.First.TYPE, ID, new Gauge.First(4)));

        assertThat(apply(change().replace(Gauge.First.TYPE, old, new Gauge.First(5))))
                .isEqualTo("out-of-date");
        assertThat(apply(change().create(Gauge.First.TYPE, ID, new Gauge.First(5))))
                .isEqualTo("out-of-date");
        assertThat(stored().value().width()).isEqualTo(4);
    }

    @Test
    void goesOnCounting_whenADocumentIsRemovedAndComesAgain() {
        apply(change().create(Gauge.First.TYPE, ID, new Gauge.First(3)));
        apply(change().remove(REF));
        assertThat(view().find(Gauge.First.TYPE, ID)).isEmpty();
        assertThat(view().documents()).isEmpty();

        assertThat(apply(change().create(Gauge.First.TYPE, ID, new Gauge.First(4))))
                .isEqualTo("ok");
        assertThat(stored().version()).isEqualTo(3);
    }

    @Test
    void raisesABodyOfAnEarlierVersion() {
        apply(change().create(Gauge.First.TYPE, ID, new Gauge.First(3)));

        assertThat(view().find(Gauge.Third.TYPE, ID).orElseThrow().value())
                .isEqualTo(new Gauge.Third(3, Optional.empty(), ""));
        assertThat(view().documents().map(RawDocument::typeVersion)).containsExactly(1);
    }

    @Test
    void letsABodyOfALaterVersionBeReadOnly() {
        apply(change().create(Gauge.Third.TYPE, ID, new Gauge.Third(3, Optional.empty(), "measured twice")));

        Stored<Gauge.Second> read = view().find(Gauge.Second.TYPE, ID).orElseThrow();
        assertThat(read.readOnly()).isTrue();
        assertThat(read.value().widthMm()).isEqualTo(3);
        assertThat(apply(change().replace(Gauge.Second.TYPE, read, new Gauge.Second(4, Optional.empty()))))
                .isEqualTo("newer");
    }

    @Test
    void keepsFieldsThatItsRecordDoesNotKnow_insideRecordsToo() {
        Json.Obj part = new Json.Obj(Map.of("name", new Json.Text("bar"), "made", new Json.Text("1998")));
        Json.Obj body = new Json.Obj(Map.of(
                "widthMm", Json.Num.of(3), "note", new Json.Text(""), "colour", new Json.Text("grey"), "part", part));
        apply(change().add(new Operation.PutRaw(new RawDocument(REF, 3, body))));

        Stored<Gauge.Third> read = view().find(Gauge.Third.TYPE, ID).orElseThrow();
        Gauge.Third wider = new Gauge.Third(4, Optional.of(new Gauge.Part("rod")), "wider");
        assertThat(apply(change().replace(Gauge.Third.TYPE, read, wider))).isEqualTo("ok");

        Json.Obj kept = view().documents().findFirst().orElseThrow().body();
        assertThat(kept.text("colour")).contains("grey");
        assertThat(kept.text("note")).contains("wider");
        Json.Obj keptPart = (Json.Obj) kept.get("part").orElseThrow();
        assertThat(keptPart.text("made")).contains("1998");
        assertThat(keptPart.text("name")).contains("rod");
    }

    @Test
    void refusesADocumentThatIsNotNamedAsDocumentsAre() {
        Json.Obj body = new Json.Obj(Map.of());
        for (String word : List.of("evil/../x", "", "two words", "esc\u001b", "a..b", "-a")) {
            for (DocRef ref : List.of(new DocRef(word, "gauge", ID), new DocRef("owner", word, ID))) {
                assertThat(apply(change().add(new Operation.PutRaw(new RawDocument(ref, 1, body)))))
                        .as(ref.toString())
                        .isEqualTo("malformed");
            }
        }
        assertThat(apply(change().add(new Operation.PutRaw(new RawDocument(REF, 0, body)))))
                .isEqualTo("malformed");
        assertThat(view().documents()).isEmpty();
    }

    @Test
    void refusesADocumentOfMoreThanAMebibyte() {
        String long1 = "x".repeat(1 << 20);
        assertThat(apply(change().create(Gauge.Third.TYPE, ID, new Gauge.Third(3, Optional.empty(), long1))))
                .isEqualTo("too-large");
    }

    @Test
    void isAppliedWholeOrNotAtAll() {
        apply(change().create(Gauge.First.TYPE, ID, new Gauge.First(3)));
        UUID other = new UUID(2, 2);

        String code = apply(change().put(Gauge.First.TYPE, other, new Gauge.First(1))
                .add(new Operation.PutRaw(new RawDocument(REF, 0, new Json.Obj(Map.of())))));
        assertThat(code).isEqualTo("newer");
        assertThat(view().all(Gauge.First.TYPE)).extracting(Stored::id).isEqualTo(List.of(ID));
    }

    @Test
    void refusesAChange_thatWasMadeBefore() {
        ChangeSet once = change().put(Gauge.First.TYPE, ID, new Gauge.First(3)).build();
        assertThat(apply(once)).isEqualTo("ok");
        assertThat(apply(once)).isEqualTo("change-repeated");
    }

    @Test
    void leavesAViewAsItIs_whenThingsChange() {
        apply(change().create(Gauge.First.TYPE, ID, new Gauge.First(3)));
        View before = view();
        String digest = before.contentDigest();
        apply(change().put(Gauge.First.TYPE, ID, new Gauge.First(4)).require(atVersion(1)));

        assertThat(before.find(Gauge.First.TYPE, ID).orElseThrow().value().width())
                .isEqualTo(3);
        assertThat(before.contentDigest()).isEqualTo(digest);
        assertThat(view().revision()).isEqualTo(before.revision() + 1);
        assertThat(view().contentDigest()).isNotEqualTo(digest);
    }

    private static Precondition atVersion(int version) {
        return new Precondition.DocumentAt(REF, version);
    }

    @Test
    void computesOnceAView() {
        View view = view();
        int[] times = {0};
        Derived<Integer> counted = v -> ++times[0];
        assertThat(view.derived(counted)).isEqualTo(1);
        assertThat(view.derived(counted)).isEqualTo(1);
    }
}
