package org.glintery.stash;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.glintery.api.ledger.Amount.Basis;
import org.glintery.api.ledger.Drill;
import org.glintery.api.stash.Source;
import org.glintery.api.workshop.DocumentType;
import org.glintery.api.workshop.Stored;
import org.glintery.api.workshop.View;

/**
 * What was booked as having come with a piece. The document has the piece's id. What a source says of its bags later
 * changes nothing of it.
 *
 * @param drillsPerBag what a bag was taken to hold when the supplies were booked
 */
public record SuppliesBooked(int drillsPerBag, List<Supply> supplies) {

    static final DocumentType<SuppliesBooked> TYPE = DocumentType.of("stash", "supplies-booked", SuppliesBooked.class);

    public SuppliesBooked {
        supplies = List.copyOf(supplies);
    }

    /**
     * One drill of the piece.
     *
     * @param variance in drills squared
     * @param uncounted whether an amount nobody counted came as well
     */
    public record Supply(Drill drill, Basis basis, long count, long variance, boolean uncounted) {}

    /** What a bag of the piece holds: as when its supplies were booked, else as its source says now. */
    static int drillsPerBag(View view, UUID piece, Optional<String> source) {
        return view.find(TYPE, piece)
                .map(stored -> stored.value().drillsPerBag())
                .orElseGet(() -> Source.drillsPerBag(view, source));
    }

    static Map<Drill, SuppliedDrills> of(Optional<Stored<SuppliesBooked>> stored) {
        Map<Drill, SuppliedDrills> all = new LinkedHashMap<>();
        stored.ifPresent(booked -> booked.value()
                .supplies()
                .forEach(supply -> all.put(
                        supply.drill(),
                        new SuppliedDrills(supply.basis(), supply.count(), supply.variance(), supply.uncounted()))));
        return all;
    }

    static SuppliesBooked of(int drillsPerBag, Map<Drill, SuppliedDrills> supplied) {
        return new SuppliesBooked(
                drillsPerBag,
                supplied.entrySet().stream()
                        .map(one -> new Supply(
                                one.getKey(),
                                one.getValue().basis(),
                                one.getValue().count(),
                                one.getValue().variance(),
                                one.getValue().uncounted()))
                        .toList());
    }
}
