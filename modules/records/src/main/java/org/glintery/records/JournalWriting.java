package org.glintery.records;

import java.io.ByteArrayOutputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.UUID;
import org.glintery.api.workshop.DocRef;

/** A journal entry as bytes. {@link JournalReading} is the inverse; a change here needs a new {@link #FORM}. */
final class JournalWriting {
    static final int FORM = 1;

    private final ByteArrayOutputStream bytes = new ByteArrayOutputStream(512);
    private final DataOutputStream out = new DataOutputStream(bytes);

    private JournalWriting() {}

    static byte[] bytes(JournalEntry entry) throws IOException {
        var writing = new JournalWriting();
        writing.out.writeByte(FORM);
        writing.change(entry.change());
        writing.names(entry.names().drills());
        writing.names(entry.names().spots());
        writing.names(entry.names().texts());
        writing.out.writeInt(entry.movements().size());
        for (MovementRow row : entry.movements()) {
            writing.movement(row);
        }
        writing.out.writeInt(entry.documents().size());
        for (Document document : entry.documents()) {
            writing.document(document);
        }
        writing.out.writeInt(entry.blobs().size());
        for (JournalEntry.BlobChange blob : entry.blobs()) {
            writing.blob(blob);
        }
        return writing.bytes.toByteArray();
    }

    private void change(ChangeRow row) throws IOException {
        out.writeLong(row.number());
        id(row.id());
        text(row.sentence());
        out.writeLong(EpochNanos.of(row.recordedAt()));
        out.writeByte(DiskCodes.CHANGES.of(row.kind()));
        out.writeLong(row.undoes());
        out.writeLong(row.firstMovement());
        out.writeInt(row.movements());
    }

    private void names(JournalEntry.Some names) throws IOException {
        out.writeInt(names.first());
        out.writeInt(names.values().size());
        for (String value : names.values()) {
            text(value);
        }
    }

    private void movement(MovementRow row) throws IOException {
        out.writeLong(row.sequence());
        id(row.id());
        out.writeByte(DiskCodes.MOVEMENTS.of(row.kind()));
        Effect effect = row.effect();
        out.writeInt(effect.drill());
        out.writeInt(effect.from());
        out.writeInt(effect.to());
        out.writeLong(effect.count());
        out.writeLong(effect.fromVariance());
        out.writeInt(effect.fromUncounted());
        out.writeLong(effect.toVariance());
        out.writeInt(effect.toUncounted());
        out.writeInt(row.lot());
        out.writeByte(row.basis());
        out.writeLong(row.said());
        out.writeLong(row.uncertainty());
        out.writeInt(row.reason());
        out.writeInt(row.happened());
        out.writeLong(EpochNanos.of(row.recordedAt()));
        out.writeLong(row.reverses());
        out.writeLong(row.change());
    }

    private void document(Document document) throws IOException {
        DocRef ref = document.ref();
        out.writeInt(document.number());
        text(ref.owner());
        text(ref.type());
        id(ref.id());
        out.writeInt(document.typeVersion());
        out.writeInt(document.version());
        out.writeBoolean(document.present());
        if (document.present()) {
            block(document.packed());
        }
    }

    private void blob(JournalEntry.BlobChange change) throws IOException {
        text(change.blob().hash());
        text(change.blob().mediaType());
        out.writeLong(change.blob().size());
        out.writeBoolean(change.added());
    }

    private void id(UUID id) throws IOException {
        out.writeLong(id.getMostSignificantBits());
        out.writeLong(id.getLeastSignificantBits());
    }

    private void text(String text) throws IOException {
        block(text.getBytes(StandardCharsets.UTF_8));
    }

    private void block(byte[] block) throws IOException {
        out.writeInt(block.length);
        out.write(block);
    }
}
