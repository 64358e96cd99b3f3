package org.glintery.api.workshop;

import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import org.glintery.api.PlainText;
import org.glintery.api.Stable;
import org.glintery.api.ledger.LedgerAction;

/**
 * A change as data: applied whole or not at all. Immutable.
 *
 * @param id made by the caller; a change set with an id that was applied before is refused with
 *     {@code change-repeated}
 * @param sentence for the undo menu, such as "Shelve Rope-walk"
 */
@Stable
public record ChangeSet(UUID id, String sentence, List<Precondition> preconditions, List<Operation> operations) {

    public ChangeSet {
        sentence = PlainText.line(sentence);
        preconditions = List.copyOf(preconditions);
        operations = List.copyOf(operations);
    }

    public static Builder named(String sentence) {
        return new Builder(sentence);
    }

    /** This change and another as one, under this one's id and sentence. */
    public ChangeSet join(ChangeSet other) {
        var pre = new ArrayList<>(preconditions);
        pre.addAll(other.preconditions);
        var ops = new ArrayList<>(operations);
        ops.addAll(other.operations);
        return new ChangeSet(id, sentence, pre, ops);
    }

    /** Collects the steps of a change. Not safe for use by several threads. */
    public static final class Builder {
        private final String sentence;
        private final List<Precondition> preconditions = new ArrayList<>();
        private final List<Operation> operations = new ArrayList<>();

        private Builder(String sentence) {
            this.sentence = sentence;
        }

        /** Puts a document that must not exist yet. */
        public <T extends Record> Builder create(DocumentType<T> type, UUID id, T value) {
            return require(new Precondition.DocumentAt(type.ref(id), 0)).add(new Operation.Put<>(type, id, value));
        }

        /** Replaces a document that must still be as it was read. */
        public <T extends Record> Builder replace(DocumentType<T> type, Stored<T> old, T value) {
            return require(new Precondition.DocumentAt(type.ref(old.id()), old.version()))
                    .add(new Operation.Put<>(type, old.id(), value));
        }

        /** Puts a document whatever stood there. */
        public <T extends Record> Builder put(DocumentType<T> type, UUID id, T value) {
            return add(new Operation.Put<>(type, id, value));
        }

        public Builder remove(DocRef ref) {
            return add(new Operation.Remove(ref));
        }

        public Builder post(LedgerAction action) {
            return add(new Operation.Post(action));
        }

        public Builder blob(Blob blob) {
            return add(new Operation.AddBlob(blob));
        }

        public Builder require(Precondition precondition) {
            preconditions.add(precondition);
            return this;
        }

        public Builder add(Operation operation) {
            operations.add(operation);
            return this;
        }

        public Builder addAll(List<? extends Operation> more) {
            operations.addAll(more);
            return this;
        }

        public boolean isEmpty() {
            return operations.isEmpty();
        }

        public ChangeSet build() {
            return build(UUID.randomUUID());
        }

        public ChangeSet build(UUID id) {
            return new ChangeSet(id, sentence, preconditions, operations);
        }
    }
}
