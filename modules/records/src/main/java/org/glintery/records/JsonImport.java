package org.glintery.records;

import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Base64;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.glintery.api.GlinteryException;
import org.glintery.api.Json;
import org.glintery.api.MalformedException;
import org.glintery.api.Refusal;
import org.glintery.api.Result;
import org.glintery.api.workshop.Blob;
import org.glintery.api.workshop.Workshop.CopyReport;
import org.glintery.records.PreparedChange.Step;
import org.openide.util.NbBundle.Messages;

/** Brings an export into an empty workshop as one change: all of it or nothing. */
@Messages({
    "import-not-empty=This workshop is not empty. Nothing was imported; make a new workshop and import into that.",
    "import-newer=This export was written by a newer Glintery. Nothing was imported; update Glintery.",
    "# {0} - what is wrong",
    "import-unreadable=This is not an export of a workshop: {0}. Nothing was imported.",
    "# {0} - hash",
    "import-bad-bytes=the bytes of the picture {0} are damaged",
    "import-nameless=it does not say that it is one",
    "import-file=the file can't be read",
    "import-beginning=it does not begin as one",
    "import-end=something follows its end",
    "import-list=a list is missing",
    "import-item=an item of a list is not written as one",
    "import-other=a part of it can't be as it is written",
    "import-sentence=Import a workshop"
})
final class JsonImport {
    private final H2Workshop workshop;
    private final IncomingItems items;
    private final List<Step> documents = new ArrayList<>();
    private final List<Step> actions = new ArrayList<>();
    private final Map<String, KeptBlob> blobs = new LinkedHashMap<>();
    private Refusal refusal;
    private boolean known;

    JsonImport(H2Workshop workshop, JacksonCodec codec) {
        this.workshop = workshop;
        this.items = new IncomingItems(codec);
    }

    Result<CopyReport> readFile(Path file) {
        if (!workshop.isEmpty()) {
            return Result.refused("not-empty", Bundle.import_not_empty());
        }
        boolean taken = false;
        try {
            Result<CopyReport> result = readInto(file);
            taken = result instanceof Result.Ok<CopyReport>;
            return result;
        } finally {
            if (!taken) {
                blobs.values().forEach(workshop::takeAway);
            }
        }
    }

    private Result<CopyReport> readInto(Path file) {
        try (JsonParser parser = JacksonCodec.mapper().createParser(file.toFile())) {
            read(parser);
            if (refusal != null) {
                return Result.refused(refusal);
            }
            if (!known) {
                return Result.refused("unreadable", Bundle.import_unreadable(Bundle.import_nameless()));
            }
            List<Step> steps = new ArrayList<>();
            blobs.values().forEach(blob -> steps.add(new Step.KeepBlob(blob)));
            steps.addAll(documents);
            steps.addAll(actions);
            var change = new PreparedChange(UUID.randomUUID(), Bundle.import_sentence(), List.of(), steps, true);
            if (workshop.apply(change) instanceof Result.Refused<?> refused) {
                return Result.refused(refused.refusal());
            }
            return Result.ok(new CopyReport(file, documents.size(), actions.size(), blobs.size(), Files.size(file)));
        } catch (NewerException e) {
            return Result.refused("newer", Bundle.import_newer());
        } catch (MalformedException e) {
            return Result.refused("unreadable", Bundle.import_unreadable(e.getMessage()));
        } catch (IllegalArgumentException | ArithmeticException e) { // what a library says of it is no sentence of ours
            return Result.refused("unreadable", Bundle.import_unreadable(Bundle.import_other()));
        } catch (com.fasterxml.jackson.core.JsonProcessingException e) {
            return Result.refused(
                    "unreadable", Bundle.import_unreadable(MalformedWords.of(e).getMessage()));
        } catch (IOException e) {
            return Result.refused("unreadable", Bundle.import_unreadable(Bundle.import_file()));
        } catch (GlinteryException e) {
            if (e.getCause() instanceof IOException disk) { // a picture could not be laid down
                return Result.refused(DiskRefusals.of(disk, false));
            }
            throw e;
        }
    }

    private static final class NewerException extends IOException {
        private static final long serialVersionUID = 1L;
    }

    private void read(JsonParser parser) throws IOException {
        if (parser.nextToken() != JsonToken.START_OBJECT) {
            throw new MalformedException(Bundle.import_beginning());
        }
        while (parser.nextToken() != JsonToken.END_OBJECT) {
            String field = parser.currentName();
            JsonToken value = parser.nextToken();
            if (value == null) {
                throw new MalformedException(Bundle.json_early());
            }
            switch (field) {
                case "format" -> known = JsonExport.FORMAT.equals(parser.getText());
                case "version" -> {
                    if (parser.getIntValue() > JsonExport.VERSION) {
                        throw new NewerException();
                    }
                }
                case "documents" -> each(parser, item -> documents.add(items.document(item)));
                case "ledger" -> each(parser, item -> actions.add(items.action(item)));
                case "blobs" -> each(parser, item -> lay(IncomingItems.text(item, "hash"), blob(item)));
                default -> parser.skipChildren();
            }
        }
        if (parser.nextToken() != null) {
            throw new MalformedException(Bundle.import_end());
        }
    }

    private interface Item {
        void take(Json.Obj item);
    }

    private static void each(JsonParser parser, Item item) throws IOException {
        if (parser.currentToken() != JsonToken.START_ARRAY) {
            throw new MalformedException(Bundle.import_list());
        }
        while (parser.nextToken() != JsonToken.END_ARRAY) {
            if (parser.currentToken() == null || !(JsonTrees.read(parser) instanceof Json.Obj object)) {
                throw new MalformedException(Bundle.import_item());
            }
            item.take(object);
        }
    }

    /** Pictures go into the folder one by one: together they may be larger than the memory. */
    private void lay(String told, Blob blob) {
        if (refusal == null) {
            refusal = blob.hash().equals(told) ? ChangeMaking.check(blob).orElse(null) : Refusals.wrongHash();
        }
        if (refusal == null && !blobs.containsKey(blob.hash())) {
            blobs.put(blob.hash(), new KeptBlob(blob.hash(), blob.mediaType(), blob.bytes().length));
            workshop.lay(blob);
        }
    }

    private static Blob blob(Json.Obj item) {
        String mediaType = IncomingItems.text(item, "mediaType");
        try {
            return Blob.of(mediaType, Base64.getDecoder().decode(IncomingItems.text(item, "bytes")));
        } catch (IllegalArgumentException e) {
            throw new MalformedException(Bundle.import_bad_bytes(IncomingItems.text(item, "hash")), e);
        }
    }
}
