package org.glintery.workbench;

import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
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

/** A view that holds documents and nothing else. */
public final class TestView implements View {
    private final long revision;
    private final Map<DocumentType<?>, Map<UUID, Stored<?>>> documents = new LinkedHashMap<>();

    public TestView(long revision) {
        this.revision = revision;
    }

    public <T extends Record> TestView with(DocumentType<T> type, UUID id, T value) {
        documents.computeIfAbsent(type, t -> new LinkedHashMap<>()).put(id, new Stored<>(id, 1, value, false));
        return this;
    }

    @Override
    public long revision() {
        return revision;
    }

    @Override
    public LocalDate day() {
        return LocalDate.of(2025, 5, 2);
    }

    @Override
    @SuppressWarnings("unchecked")
    public <T extends Record> Optional<Stored<T>> find(DocumentType<T> type, UUID id) {
        return Optional.ofNullable(
                (Stored<T>) documents.getOrDefault(type, Map.of()).get(id));
    }

    @Override
    @SuppressWarnings("unchecked")
    public <T extends Record> List<Stored<T>> all(DocumentType<T> type) {
        return documents.getOrDefault(type, Map.of()).values().stream()
                .map(s -> (Stored<T>) s)
                .toList();
    }

    @Override
    public Stream<RawDocument> documents() {
        return Stream.of();
    }

    @Override
    public List<DocRef> putOrder() {
        return List.of();
    }

    @Override
    public Map<String, String> blobs() {
        return Map.of();
    }

    @Override
    public Balance balance(Spot spot, Drill drill) {
        return Balance.ZERO;
    }

    @Override
    public Map<Drill, Balance> contents(Spot spot) {
        return Map.of();
    }

    @Override
    public Map<Spot, Balance> whereabouts(Drill drill) {
        return Map.of();
    }

    @Override
    public Set<Spot> spots() {
        return Set.of();
    }

    @Override
    public long inTheHouse(Drill drill) {
        return 0;
    }

    @Override
    public long reserved(Drill drill) {
        return 0;
    }

    @Override
    public long available(Drill drill) {
        return 0;
    }

    @Override
    public String contentDigest() {
        return "";
    }

    @Override
    public <T> T derived(Derived<T> what) {
        return what.from(this);
    }
}
