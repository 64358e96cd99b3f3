package org.glintery.api.workshop;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Stream;
import org.glintery.api.Stable;
import org.glintery.api.ledger.Balance;
import org.glintery.api.ledger.Drill;
import org.glintery.api.ledger.Spot;

/**
 * All that the workshop holds at one revision. Immutable; any thread. No waiting for documents; the first question about
 * drills after opening waits until the ledger is read, and not on the event thread, where it throws an
 * {@link IllegalStateException} instead.
 */
@Stable
public interface View {
    long revision();

    /** The day on which it was taken, by the workshop's clock: what is dated later has not been yet. */
    LocalDate day();

    /**
     * A document, brought up to its type's version. Empty when there is none.
     *
     * @throws org.glintery.api.MalformedException when its body can't be read as the type's record
     */
    <T extends Record> Optional<Stored<T>> find(DocumentType<T> type, UUID id);

    /** All documents of a type, in the order they were first put. The list is shared and immutable. */
    <T extends Record> List<Stored<T>> all(DocumentType<T> type);

    /** Every document, also those whose owner is absent, ordered by key. */
    Stream<RawDocument> documents();

    /** The keys of all documents in the order in which they were first put, whatever their kind. */
    List<DocRef> putOrder();

    /** The hashes and media types of all blobs. */
    Map<String, String> blobs();

    /** What lies in a spot; zero for spots never used. Boundaries count what went out less what came in. */
    Balance balance(Spot spot, Drill drill);

    /** Non-zero balances of one spot. */
    Map<Drill, Balance> contents(Spot spot);

    /** Non-zero balances of one drill, boundaries among them. */
    Map<Spot, Balance> whereabouts(Drill drill);

    /** Spots with a non-zero balance. */
    Set<Spot> spots();

    /** What lies in bags and pockets. */
    long inTheHouse(Drill drill);

    /** What is reserved and has not expired. */
    long reserved(Drill drill);

    /** In the house less reserved; may be below zero after a loss. */
    long available(Drill drill);

    /**
     * SHA-256 over the documents' bodies, the balances inside the workshop and the blobs: equal digests
     * mean equal content, whatever the history. Takes time in proportion to the workshop.
     */
    String contentDigest();

    /** Computes once a view, then remembers. */
    <T> T derived(Derived<T> what);
}
