package org.glintery.testkit;

import java.time.LocalDate;
import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.UUID;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.glintery.api.ledger.Balance;
import org.glintery.api.ledger.Drill;
import org.glintery.api.ledger.Spot;
import org.glintery.api.workshop.Blob;
import org.glintery.api.workshop.Derived;
import org.glintery.api.workshop.DocRef;
import org.glintery.api.workshop.DocumentType;
import org.glintery.api.workshop.RawDocument;
import org.glintery.api.workshop.Stored;
import org.glintery.api.workshop.View;

/** What a workshop in memory holds at one revision and day. Any thread. */
final class MemoryView implements View {
    private final MemoryState state;
    private final LocalDate day;
    private final Map<Object, Object> derived = new HashMap<>();

    MemoryView(MemoryState state, LocalDate day) {
        this.state = state;
        this.day = day;
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
        return state.documents().find(type.ref(id)).map(kept -> kept.as(type));
    }

    @Override
    public <T extends Record> List<Stored<T>> all(DocumentType<T> type) {
        return remembered(
                type,
                () -> state.documents()
                        .present()
                        .filter(kept -> kept.ref().owner().equals(type.owner())
                                && kept.ref().type().equals(type.name()))
                        .map(kept -> kept.as(type))
                        .toList());
    }

    @Override
    public Stream<RawDocument> documents() {
        return state.documents().byKey().map(kept -> new RawDocument(kept.ref(), kept.typeVersion(), kept.body()));
    }

    @Override
    public List<DocRef> putOrder() {
        return state.documents().present().map(MemoryDocuments.Kept::ref).toList();
    }

    @Override
    public Map<String, String> blobs() {
        return state.blobs().values().stream().collect(Collectors.toUnmodifiableMap(Blob::hash, Blob::mediaType));
    }

    @Override
    public Balance balance(Spot spot, Drill drill) {
        return state.ledger().at(spot, drill);
    }

    @Override
    public Map<Drill, Balance> contents(Spot spot) {
        Map<Drill, Balance> contents = new LinkedHashMap<>();
        state.ledger().each((place, balance) -> {
            if (place.spot().equals(spot)) {
                contents.put(place.drill(), balance);
            }
        });
        return Collections.unmodifiableMap(contents);
    }

    @Override
    public Map<Spot, Balance> whereabouts(Drill drill) {
        Map<Spot, Balance> whereabouts = new LinkedHashMap<>();
        state.ledger().each((place, balance) -> {
            if (place.drill().equals(drill)) {
                whereabouts.put(place.spot(), balance);
            }
        });
        return Collections.unmodifiableMap(whereabouts);
    }

    @Override
    public Set<Spot> spots() {
        Set<Spot> spots = new java.util.HashSet<>();
        state.ledger().each((place, balance) -> spots.add(place.spot()));
        return Collections.unmodifiableSet(spots);
    }

    @Override
    public long inTheHouse(Drill drill) {
        return state.ledger().inTheHouse(drill);
    }

    @Override
    public long reserved(Drill drill) {
        return state.ledger().reserved(drill, day);
    }

    @Override
    public long available(Drill drill) {
        return state.ledger().free(drill, day);
    }

    @Override
    public String contentDigest() {
        PlainCodec codec = new PlainCodec();
        StringBuilder content = new StringBuilder();
        documents()
                .forEach(one -> content.append(one.ref())
                        .append(' ')
                        .append(one.typeVersion())
                        .append(' ')
                        .append(codec.compact(one.body()))
                        .append('\n'));
        Set<String> balances = new TreeSet<>();
        state.ledger().each((place, balance) -> {
            if (!place.spot().isBoundary()) {
                balances.add(place + " " + balance);
            }
        });
        content.append(balances).append(new TreeMap<>(blobs()));
        return Blob.hash(content.toString().getBytes(java.nio.charset.StandardCharsets.UTF_8));
    }

    @Override
    public <T> T derived(Derived<T> what) {
        return remembered(what, () -> what.from(this));
    }

    private <T> T remembered(Object key, Supplier<T> making) {
        synchronized (derived) {
            if (!derived.containsKey(key)) {
                derived.put(key, making.get());
            }
            @SuppressWarnings("unchecked") // a key is used for one kind of value
            T value = (T) derived.get(key);
            return value;
        }
    }
}
