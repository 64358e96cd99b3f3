package org.glintery.records;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.glintery.api.GlinteryException;
import org.glintery.api.Json;
import org.glintery.api.MalformedException;
import org.glintery.api.ledger.LedgerAction;
import org.glintery.api.workshop.Blob;
import org.glintery.api.workshop.ChangeSet;
import org.glintery.api.workshop.DocRef;
import org.glintery.api.workshop.DocumentType;
import org.glintery.api.workshop.Operation;
import org.glintery.api.workshop.Precondition;

/**
 * A change with its records turned into JSON already: that runs their accessors, which are other modules' code, and so
 * happens on the caller's thread.
 *
 * @param trusted whether reservations are taken as they come: an import brings the shortages of its own workshop along
 */
record PreparedChange(UUID id, String sentence, List<Precondition> preconditions, List<Step> steps, boolean trusted) {

    /** One operation. */
    sealed interface Step {
        /**
         * @param record null when the body is taken as it is
         * @param raised the body that stands, where it had to be raised to this version first
         */
        record Put(DocRef ref, int typeVersion, Json.Obj body, Class<?> record, Optional<Raised> raised)
                implements Step {}

        record Remove(DocRef ref) implements Step {}

        /** @param sides what a reversal from elsewhere did there; empty where the rules say it */
        record Post(LedgerAction action, Optional<Sides> sides) implements Step {}

        record AddBlob(Blob blob) implements Step {}

        /** A blob whose bytes an import has put into the folder already, checked. */
        record KeepBlob(KeptBlob blob) implements Step {}
    }

    /** A body of an earlier version as its owner's upcasters raised it. @param version that of the document */
    record Raised(int version, Json.Obj body) {}

    /** @throws MalformedException when a record can't be written as JSON */
    static PreparedChange of(ChangeSet change, Documents documents, JacksonCodec codec) {
        List<Step> steps = new ArrayList<>(change.operations().size());
        for (Operation operation : change.operations()) {
            steps.add(step(operation, documents, codec));
        }
        return new PreparedChange(change.id(), change.sentence(), change.preconditions(), steps, false);
    }

    private static Step step(Operation operation, Documents documents, JacksonCodec codec) {
        if (operation instanceof Operation.Put<?> put) {
            if (!(codec.toJson(put.value()) instanceof Json.Obj body)) {
                throw new GlinteryException("a document must be a record");
            }
            DocumentType<?> type = put.type();
            DocRef ref = type.ref(put.id());
            Optional<Raised> raised = documents
                    .find(ref)
                    .filter(old -> old.typeVersion() < type.version())
                    .map(old -> new Raised(old.version(), Upcasting.raise(old.body(codec), old.typeVersion(), type)));
            return new Step.Put(ref, type.version(), body, type.record(), raised);
        }
        if (operation instanceof Operation.PutRaw raw) {
            return new Step.Put(
                    raw.document().ref(),
                    raw.document().typeVersion(),
                    raw.document().body(),
                    null,
                    Optional.empty());
        }
        if (operation instanceof Operation.Remove remove) {
            return new Step.Remove(remove.ref());
        }
        if (operation instanceof Operation.Post post) {
            return new Step.Post(post.action(), Optional.empty());
        }
        return new Step.AddBlob(((Operation.AddBlob) operation).blob());
    }
}
