package org.glintery.records;

import java.io.IOException;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;
import org.glintery.api.GlinteryException;
import org.glintery.api.MalformedException;
import org.glintery.api.ledger.Balance;
import org.glintery.api.workshop.DocRef;
import org.glintery.api.workshop.Workshop;
import org.openide.util.NbBundle.Messages;

/** Compares what is in memory with what is on disk. Repairs nothing. Writer thread. */
@Messages({
    "# {0} - document",
    "check-document-twice=The document {0} is there twice.",
    "# {0} - number of bookings",
    "# {1} - number of ids",
    "check-ids=Bookings: {0}, ids among them: {1}. Each should have its own.",
    "check-no-ledger=What was booked can't be read. Restore a backup into a new folder.",
    "# {0} - drill",
    "# {1} - spot",
    "check-negative=Less than nothing of {0} lies in {1}.",
    "# {0} - drill",
    "# {1} - amount in memory",
    "# {2} - sum of the bookings",
    "check-house={0}: {1} in the house, and the bookings add up to {2}.",
    "# {0} - drill",
    "# {1} - spot",
    "# {2} - amount in memory",
    "# {3} - sum of the bookings",
    "check-balance={0} in {1}: {2}, and the bookings add up to {3}.",
    "# {0} - number on disk",
    "# {1} - number in memory",
    "check-count=There are {0} documents on disk and {1} in memory.",
    "# {0} - document",
    "# {1} - what is wrong",
    "check-unfit=The document {0} does not fit its kind: {1}",
    "# {0} - document",
    "# {1} - what is wrong",
    "check-unreadable=The document {0} can''t be read: {1}",
    "# {0} - document",
    "check-damaged=The document {0} is damaged.",
    "# {0} - document",
    "check-other=The document {0} is not the one in memory.",
    "# {0} - drill",
    "check-set-aside=What is set aside of {0} is not what its documents say."
})
final class WorkshopCheck {
    private final Tables tables;
    private final Names names;
    private final JacksonCodec codec;
    private final BlobFolder blobs;
    private final Set<String> lost;
    private final DocumentFit fit;
    private final List<String> problems = new ArrayList<>();

    /** @param lost the hashes of pictures that are known to be gone */
    WorkshopCheck(Tables tables, Names names, JacksonCodec codec, BlobFolder blobs, Set<String> lost) {
        this.tables = tables;
        this.names = names;
        this.codec = codec;
        this.fit = new DocumentFit(codec);
        this.blobs = blobs;
        this.lost = lost;
    }

    Workshop.CheckReport run(State state) throws SQLException {
        var memory = new LedgerMemory(64);
        var scan = new BalanceScan(memory);
        tables.movements().scan(scan);
        compare(state.balances(), scan.balances(names.spots()));
        if (memory.ids().size() != memory.last()) {
            problems.add(Bundle.check_ids(
                    Balance.grouped(memory.last()), Balance.grouped(memory.ids().size())));
        }
        documents(state);
        reservations(state);
        pictures(state);
        return new Workshop.CheckReport(
                state.documents().count(), memory.last(), state.blobs().size(), problems);
    }

    /** What can be told although the ledger can't be read. */
    Workshop.CheckReport withoutLedger(State state) throws SQLException {
        problems.add(Bundle.check_no_ledger());
        documents(state);
        pictures(state);
        return new Workshop.CheckReport(
                state.documents().count(), 0, state.blobs().size(), problems);
    }

    private void compare(BalanceMap seen, BalanceMap added) {
        SortedSet<Integer> spots = seen.spots();
        spots.addAll(added.spots());
        for (int spot : spots) {
            seen.in(spot).forEach((drill, balance) -> same(spot, drill, balance, added));
            added.in(spot).forEach((drill, balance) -> {
                if (seen.at(spot, drill).isZero()) {
                    same(spot, drill, Balance.ZERO, added);
                }
                if (!names.spots().value(spot).isBoundary() && balance.count() < 0) {
                    problems.add(Bundle.check_negative(
                            names.drills().value(drill).words(), names.spots().value(spot)));
                }
            });
        }
        for (int number = 0; number < names.drills().size(); number++) {
            int drill = number;
            seen.of(drill).forEach((spot, balance) -> same(spot, drill, balance, seen));
            if (seen.house(drill) != added.house(drill)) {
                problems.add(Bundle.check_house(
                        names.drills().value(drill).words(),
                        Balance.grouped(seen.house(drill)),
                        Balance.grouped(added.house(drill))));
            }
        }
    }

    private void same(int spot, int drill, Balance balance, BalanceMap other) {
        if (!other.at(spot, drill).equals(balance)) {
            problems.add(Bundle.check_balance(
                    names.drills().value(drill).words(),
                    names.spots().value(spot),
                    balance.words(),
                    other.at(spot, drill).words()));
        }
    }

    private void documents(State state) throws SQLException {
        Documents onDisk = tables.documents().load();
        if (onDisk.count() != state.documents().count()) {
            problems.add(Bundle.check_count(
                    Balance.grouped(onDisk.count()),
                    Balance.grouped(state.documents().count())));
        }
        Set<DocRef> seen = new HashSet<>();
        onDisk.present().forEach(document -> {
            if (!seen.add(document.ref())) {
                problems.add(Bundle.check_document_twice(document.ref()));
            }
            try {
                fit.problem(document.ref(), document.typeVersion(), document.body(codec))
                        .ifPresent(problem -> problems.add(Bundle.check_unfit(document.ref(), problem)));
            } catch (MalformedException e) {
                problems.add(Bundle.check_unreadable(document.ref(), e.getMessage()));
            } catch (GlinteryException e) {
                problems.add(Bundle.check_damaged(document.ref()));
            }
            Optional<Document> known = state.documents().find(document.ref());
            if (known.isEmpty() || known.get().version() != document.version()) {
                problems.add(Bundle.check_other(document.ref()));
            }
        });
    }

    /** Whether as much is set aside of each drill as the documents say. */
    private void reservations(State state) throws SQLException {
        ReservedDrills told;
        try {
            told = LedgerReading.reserved(tables.documents().load(), names, codec);
        } catch (GlinteryException e) {
            return; // told of as a document that can't be read
        }
        var drills = new TreeSet<>(told.byDrill().keySet());
        drills.addAll(state.reserved().byDrill().keySet());
        for (int drill : drills) {
            if (!Objects.equals(
                    told.byDrill().get(drill), state.reserved().byDrill().get(drill))) {
                problems.add(Bundle.check_set_aside(names.drills().value(drill).words()));
            }
        }
    }

    private void pictures(State state) {
        var pictures = new PicturesOnDisk(state, codec, this::bytes);
        state.blobs().values().stream()
                .filter(blob -> !lost.contains(blob.hash()))
                .forEach(pictures::whole);
        problems.addAll(pictures.warnings());
    }

    private Optional<byte[]> bytes(String hash) {
        try {
            return blobs.read(hash);
        } catch (IOException e) {
            return Optional.empty(); // as good as gone
        }
    }
}
