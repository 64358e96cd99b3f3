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
import org.glintery.api.workshop.Blob;
import org.glintery.api.workshop.DocRef;
import org.glintery.api.workshop.Workshop;
import org.openide.util.NbBundle.Messages;

/** Compares what is in memory with what is on disk. Repairs nothing. Writer thread. */
@Messages({"# {0} - document", "check-document-twice=The document {0} is there twice."})
final class WorkshopCheck {
    private final Tables tables;
    private final Names names;
    private final JacksonCodec codec;
    private final BlobFolder blobs;
    private final DocumentFit fit;
    private final List<String> problems = new ArrayList<>();

    WorkshopCheck(Tables tables, Names names, JacksonCodec codec, BlobFolder blobs) {
        this.tables = tables;
        this.names = names;
        this.codec = codec;
        this.fit = new DocumentFit(codec);
        this.blobs = blobs;
    }

    Workshop.CheckReport run(State state) throws SQLException {
        var memory = new LedgerMemory(64);
        var scan = new BalanceScan(memory);
        tables.movements().scan(scan);
        compare(state.balances(), scan.balances(names.spots()));
        if (memory.ids().size() != memory.last()) {
            problems.add("The ledger has " + memory.last() + " entries but "
                    + memory.ids().size() + " ids.");
        }
        documents(state);
        reservations(state);
        state.blobs().values().forEach(this::blob);
        return new Workshop.CheckReport(
                state.documents().count(), memory.last(), state.blobs().size(), problems);
    }

    /** What can be told although the ledger can't be read. */
    Workshop.CheckReport withoutLedger(State state) throws SQLException {
        problems.add("The ledger can't be read. Restore a backup into a new folder.");
        documents(state);
        state.blobs().values().forEach(this::blob);
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
                    problems.add("Less than nothing of "
                            + names.drills().value(drill).words() + " lies in "
                            + names.spots().value(spot) + ".");
                }
            });
        }
        for (int number = 0; number < names.drills().size(); number++) {
            int drill = number;
            seen.of(drill).forEach((spot, balance) -> same(spot, drill, balance, seen));
            if (seen.house(drill) != added.house(drill)) {
                problems.add("There are " + seen.house(drill) + " of "
                        + names.drills().value(drill).words() + " in the house, the ledger adds up to "
                        + added.house(drill) + ".");
            }
        }
    }

    private void same(int spot, int drill, Balance balance, BalanceMap other) {
        if (!other.at(spot, drill).equals(balance)) {
            problems.add("The balance of " + names.drills().value(drill).words() + " in "
                    + names.spots().value(spot) + " is " + balance + ", the ledger adds up to "
                    + other.at(spot, drill) + ".");
        }
    }

    private void documents(State state) throws SQLException {
        Documents onDisk = tables.documents().load();
        if (onDisk.count() != state.documents().count()) {
            problems.add("There are " + onDisk.count() + " documents on disk and "
                    + state.documents().count() + " in memory.");
        }
        Set<DocRef> seen = new HashSet<>();
        onDisk.present().forEach(document -> {
            if (!seen.add(document.ref())) {
                problems.add(Bundle.check_document_twice(document.ref()));
            }
            try {
                fit.problem(document.ref(), document.typeVersion(), document.body(codec))
                        .ifPresent(problem ->
                                problems.add("The document " + document.ref() + " does not fit its kind: " + problem));
            } catch (MalformedException e) {
                problems.add("The document " + document.ref() + " can't be read: " + e.getMessage());
            } catch (GlinteryException e) {
                problems.add("The document " + document.ref() + " is damaged.");
            }
            Optional<Document> known = state.documents().find(document.ref());
            if (known.isEmpty() || known.get().version() != document.version()) {
                problems.add("The document " + document.ref() + " is not the one in memory.");
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
                problems.add("What is set aside of "
                        + names.drills().value(drill).words() + " is not what its documents say.");
            }
        }
    }

    private void blob(KeptBlob blob) {
        try {
            Optional<byte[]> bytes = blobs.read(blob.hash());
            if (bytes.isEmpty()) {
                problems.add("The picture " + blob.hash() + " is missing.");
            } else if (!Blob.hash(bytes.get()).equals(blob.hash())) {
                problems.add("The picture " + blob.hash() + " was changed or damaged.");
            }
        } catch (IOException e) {
            problems.add("The picture " + blob.hash() + " can't be read.");
        }
    }
}
