package org.glintery.records;

import java.time.LocalDate;
import java.util.Collections;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.SortedMap;
import java.util.UUID;
import java.util.stream.Stream;
import org.glintery.api.ledger.Balance;
import org.glintery.api.ledger.Drill;
import org.glintery.api.ledger.Spot;
import org.glintery.api.workshop.Derived;
import org.glintery.api.workshop.DocRef;
import org.glintery.api.workshop.DocumentType;
import org.glintery.api.workshop.RawDocument;
import org.glintery.api.workshop.Stored;
import org.glintery.api.workshop.View;

/** A state on one day, in the words of the API. Immutable; any thread. */
final class RecordsView implements View {
    private final State state;
    private final LocalDate day;
    private final Names names;
    private final JacksonCodec codec;
    private final OnceMap derived = new OnceMap();

    /** @param day which reservations have expired */
    RecordsView(State state, LocalDate day, Names names, JacksonCodec codec) {
        this.state = state;
        this.day = day;
        this.names = names;
        this.codec = codec;
    }

    State state() {
        return state;
    }

    @Override
    public LocalDate day() {
        return day;
    }

    @Override
    public long revision() {
        return state.revision();
    }

    @Override
    public <T extends Record> Optional<Stored<T>> find(DocumentType<T> type, UUID id) {
        return state.documents().find(type.ref(id)).map(document -> document.as(type, codec));
    }

    @Override
    public <T extends Record> List<Stored<T>> all(DocumentType<T> type) {
        return state.documents()
                .shelf(new DocumentKind(type.owner(), type.name()))
                .all(type, codec);
    }

    @Override
    public Stream<RawDocument> documents() {
        return state.documents().byKey().map(document -> document.raw(codec));
    }

    @Override
    public List<DocRef> putOrder() {
        return state.documents().byNumber().map(Document::ref).toList();
    }

    @Override
    public Map<String, String> blobs() {
        var types = new LinkedHashMap<String, String>();
        state.blobs().forEach((hash, blob) -> types.put(hash, blob.mediaType()));
        return Collections.unmodifiableMap(types);
    }

    @Override
    public Balance balance(Spot spot, Drill drill) {
        OptionalInt where = names.spots().find(spot);
        OptionalInt what = names.drills().find(drill);
        return where.isEmpty() || what.isEmpty()
                ? Balance.ZERO
                : state.balances().at(where.getAsInt(), what.getAsInt());
    }

    @Override
    public Map<Drill, Balance> contents(Spot spot) {
        OptionalInt where = names.spots().find(spot);
        return where.isEmpty() ? Map.of() : named(state.balances().in(where.getAsInt()), names.drills());
    }

    @Override
    public Map<Spot, Balance> whereabouts(Drill drill) {
        OptionalInt what = names.drills().find(drill);
        return what.isEmpty() ? Map.of() : named(state.balances().of(what.getAsInt()), names.spots());
    }

    private static <K> Map<K, Balance> named(SortedMap<Integer, Balance> row, NumberedNames<K> names) {
        var named = new LinkedHashMap<K, Balance>();
        row.forEach((key, balance) -> named.put(names.value(key), balance));
        return Collections.unmodifiableMap(named);
    }

    @Override
    public Set<Spot> spots() {
        var spots = new HashSet<Spot>();
        state.balances().spots().forEach(number -> spots.add(names.spots().value(number)));
        return Collections.unmodifiableSet(spots);
    }

    @Override
    public long inTheHouse(Drill drill) {
        OptionalInt number = names.drills().find(drill);
        return number.isEmpty() ? 0 : state.balances().house(number.getAsInt());
    }

    @Override
    public long reserved(Drill drill) {
        OptionalInt number = names.drills().find(drill);
        return number.isEmpty() ? 0 : state.reserved().reserved(number.getAsInt(), day);
    }

    @Override
    public long available(Drill drill) {
        return inTheHouse(drill) - reserved(drill);
    }

    @Override
    public String contentDigest() {
        return derived.get(ContentDigest.class, () -> ContentDigest.of(state, names));
    }

    @Override
    public <T> T derived(Derived<T> what) {
        return derived.get(what, () -> what.from(this));
    }
}
