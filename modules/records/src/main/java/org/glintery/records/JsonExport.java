package org.glintery.records;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.glintery.api.Json;
import org.glintery.api.Result;
import org.glintery.api.disk.NewFile;
import org.glintery.api.workshop.LedgerQuery;
import org.glintery.api.workshop.Workshop.CopyReport;

/** Writes a whole workshop as one JSON file, piece by piece. */
final class JsonExport {
    static final String FORMAT = "glintery-workshop";
    static final int VERSION = 1;
    /** Beside a reversal: what it did to uncertainty and uncounted amounts. */
    static final String SIDES = "sides";

    private final H2Workshop workshop;
    private final JacksonCodec codec;

    JsonExport(H2Workshop workshop, JacksonCodec codec) {
        this.workshop = workshop;
        this.codec = codec;
    }

    Result<CopyReport> writeFile(Path file) {
        State state = workshop.state();
        var pictures = new PicturesOnDisk(state, codec, workshop::blob);
        return NewFile.write(file, out -> {
                    Counts counts = write(out, state, pictures, true);
                    return Result.ok(counts, pictures.warnings());
                })
                .then(counts -> counts.report(file));
    }

    /** How much was written. */
    record Counts(long documents, long movements, long blobs) {
        Result<CopyReport> report(Path file) {
            try {
                return Result.ok(new CopyReport(file, documents, movements, blobs, Files.size(file)));
            } catch (IOException e) {
                return Result.refused(DiskRefusals.of(e, false));
            }
        }
    }

    /**
     * Pictures that are not whole are left out.
     *
     * @param withBytes whether pictures are written into the file, as base64
     */
    Counts write(OutputStream out, State state, PicturesOnDisk pictures, boolean withBytes) throws IOException {
        try (JsonGenerator json = JacksonCodec.mapper().createGenerator(out)) {
            json.disable(JsonGenerator.Feature.AUTO_CLOSE_TARGET);
            json.useDefaultPrettyPrinter();
            json.writeStartObject();
            json.writeStringField("format", FORMAT);
            json.writeNumberField("version", VERSION);
            json.writeArrayFieldStart("documents");
            var documents = state.documents().byNumber().toList();
            for (Document document : documents) {
                document(json, document);
            }
            json.writeEndArray();
            json.writeArrayFieldStart("ledger");
            long movements = ledger(json, state.revision());
            json.writeEndArray();
            json.writeArrayFieldStart("blobs");
            int whole = 0;
            for (KeptBlob blob : state.blobs().values()) {
                whole += blob(json, blob, pictures, withBytes) ? 1 : 0;
            }
            json.writeEndArray();
            json.writeEndObject();
            return new Counts(documents.size(), movements, whole);
        }
    }

    private void document(JsonGenerator json, Document document) throws IOException {
        json.writeStartObject();
        json.writeStringField("owner", document.ref().owner());
        json.writeStringField("type", document.ref().type());
        json.writeStringField("id", document.ref().id().toString());
        json.writeNumberField("typeVersion", document.typeVersion());
        json.writeFieldName("body");
        JsonTrees.write(document.body(codec), json);
        json.writeEndObject();
    }

    private long ledger(JsonGenerator json, long revision) {
        long[] count = {0};
        workshop.ledger(LedgerQuery.all(), revision, (entry, row) -> {
            Json.Obj action = (Json.Obj) codec.toJson(entry.action());
            boolean reversal = row.kind() == MovementRow.Kind.REVERSAL;
            try {
                JsonTrees.write(reversal ? action.with(SIDES, codec.toJson(Sides.of(row.effect()))) : action, json);
                count[0]++;
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        });
        return count[0];
    }

    private static boolean blob(JsonGenerator json, KeptBlob blob, PicturesOnDisk pictures, boolean withBytes)
            throws IOException {
        Optional<byte[]> bytes = withBytes ? pictures.whole(blob) : Optional.empty();
        if (withBytes && bytes.isEmpty() || pictures.lost().contains(blob.hash())) {
            return false;
        }
        json.writeStartObject();
        json.writeStringField("hash", blob.hash());
        json.writeStringField("mediaType", blob.mediaType());
        if (withBytes) {
            json.writeBinaryField("bytes", bytes.get());
        }
        json.writeEndObject();
        return true;
    }
}
