package org.glintery.records;

import java.sql.SQLException;
import java.util.List;
import java.util.UUID;
import org.glintery.api.GlinteryException;
import org.glintery.api.MalformedException;
import org.glintery.api.workshop.Reservation;

/**
 * What the writer remembers of the ledger, read whole when it is first needed.
 *
 * @param changeIds every change's id with its number
 */
record LedgerReading(Booked booked, LedgerMemory memory, MovementIds changeIds) {

    /** Writer thread. */
    static LedgerReading of(Tables tables, Names names, JacksonCodec codec, Documents documents) throws SQLException {
        var memory = new LedgerMemory(Math.toIntExact(tables.movements().count()));
        var scan = new BalanceScan(memory);
        tables.movements().scan(scan);
        BalanceMap balances = scan.balances(names.spots());
        var changeIds = new MovementIds(64);
        tables.changes().loadIds(changeIds);
        return new LedgerReading(new Booked(balances, reserved(documents, names, codec)), memory, changeIds);
    }

    private record Held(UUID id, Reservation reservation) {}

    /** What the reservations among the documents set aside. */
    static ReservedDrills reserved(Documents documents, Names names, JacksonCodec codec) {
        var kind = new DocumentKind(Reservation.TYPE.owner(), Reservation.TYPE.name());
        List<Document> all = documents.shelf(kind).inOrder().toList();
        ReservedDrills reserved = ReservedDrills.NONE;
        for (Held held : all.parallelStream().map(one -> held(one, codec)).toList()) {
            int drill = names.drills().number(held.reservation().drill());
            reserved = reserved.with(held.id(), drill, held.reservation());
        }
        return reserved;
    }

    private static Held held(Document document, JacksonCodec codec) {
        try {
            return new Held(document.ref().id(), codec.decode(PackedBody.unpack(document.packed()), Reservation.class));
        } catch (MalformedException e) {
            throw new GlinteryException("a reservation can't be read: " + document.ref(), e);
        }
    }
}
