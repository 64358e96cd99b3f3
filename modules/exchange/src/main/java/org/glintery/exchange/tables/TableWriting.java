package org.glintery.exchange.tables;

import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.glintery.api.JsonCodec;
import org.glintery.api.ledger.Balance;
import org.glintery.api.workshop.Blob;
import org.glintery.api.workshop.DocRef;
import org.glintery.api.workshop.LedgerQuery;
import org.glintery.api.workshop.PictureKind;
import org.glintery.api.workshop.RawDocument;
import org.glintery.api.workshop.View;
import org.glintery.api.workshop.Workshop;
import org.openide.util.NbBundle.Messages;

/** Writes everything that a workshop holds into one zip. Used once. */
@Messages({
    "TableWriting.readme=This zip holds a whole workshop as tables. Each .csv file opens in a spreadsheet.\\n\\n"
            + "There is one table for each kind of thing, such as stash.piece.csv. Lists within things have a table of their own, "
            + "such as stash.legend.lines.csv; its first column says to which thing a row belongs, the next one at which place. "
            + "The column order says in which order things came into the workshop, over all tables. "
            + "movements.csv holds every movement of drills in the order in which it was recorded. blobs.csv lists the pictures, "
            + "which lie in the folder pictures. columns.csv says what each column holds, so that everything can be brought back "
            + "into an empty workshop.\\n\\n"
            + "A blank cell is something that was never said. A single apostrophe is an empty text; an apostrophe before other text "
            + "keeps spreadsheets from running it. What follows a tilde is JSON.\\n",
    "# {0} - how many",
    "# {1} - how many, in figures",
    "TableWriting.picturesLost={0,choice,1#A picture is|1<{1} pictures are} gone or damaged in this workshop''s folder and left out. ''workshop check'' tells whose."
})
final class TableWriting {
    private final Workshop workshop;
    private final View view;
    private final JsonCodec codec;
    private final TablesZip zip;
    private final Map<DocRef, Integer> order = new HashMap<>();
    private long documents;
    private long movements;

    TableWriting(Workshop workshop, View view, JsonCodec codec, OutputStream out) {
        this.workshop = workshop;
        this.view = view;
        this.codec = codec;
        this.zip = new TablesZip(out, new Cells(codec));
        view.putOrder().forEach(ref -> order.put(ref, order.size() + 1));
    }

    /** How much was written. */
    record Counts(long documents, long movements, long blobs, List<String> warnings) {}

    /** Pictures that are not whole any more are left out, with a warning. */
    Counts write() throws IOException {
        zip.text("README.txt", Bundle.TableWriting_readme());
        documents();
        zip.tables(TablesZip.MOVEMENTS, TablesZip.MOVEMENT_KEYS, this::eachMovement);
        int pictures = blobs();
        zip.finish();
        int lost = view.blobs().size() - pictures;
        return new Counts(
                documents,
                movements,
                pictures,
                lost == 0 ? List.of() : List.of(Bundle.TableWriting_picturesLost(lost, Balance.grouped(lost))));
    }

    /** One kind after the other: that is how the view orders them. */
    private void documents() throws IOException {
        List<RawDocument> kind = new ArrayList<>();
        Iterator<RawDocument> all = view.documents().iterator();
        while (all.hasNext()) {
            RawDocument document = all.next();
            if (!kind.isEmpty() && !table(kind.get(0)).equals(table(document))) {
                kind(kind);
                kind.clear();
            }
            kind.add(document);
        }
        if (!kind.isEmpty()) {
            kind(kind);
        }
    }

    private void kind(List<RawDocument> all) throws IOException {
        documents += all.size();
        zip.tables(table(all.get(0)), TablesZip.DOCUMENT_KEYS, each -> {
            for (RawDocument document : all) {
                each.take(
                        List.of(
                                document.ref().id().toString(),
                                String.valueOf(document.typeVersion()),
                                String.valueOf(order.get(document.ref()))),
                        document.body());
            }
        });
    }

    private static String table(RawDocument document) {
        return Column.encoded(document.ref().owner()) + "."
                + Column.encoded(document.ref().type());
    }

    private void eachMovement(TablesZip.Each each) throws IOException {
        movements = 0;
        try {
            workshop.ledger(LedgerQuery.all(), entry -> {
                try {
                    each.take(List.of(String.valueOf(entry.sequence())), codec.toJson(entry.action()));
                    movements++;
                } catch (IOException e) {
                    throw new UncheckedIOException(e);
                }
            });
        } catch (UncheckedIOException e) {
            throw e.getCause();
        }
    }

    /** How many were whole. */
    private int blobs() throws IOException {
        List<List<String>> rows = new ArrayList<>();
        for (Map.Entry<String, String> blob : new TreeMap<>(view.blobs()).entrySet()) {
            Optional<byte[]> whole = workshop.blob(blob.getKey())
                    .filter(bytes -> Blob.hash(bytes).equals(blob.getKey()));
            if (whole.isEmpty()) {
                continue;
            }
            byte[] bytes = whole.get();
            String file = TablesZip.PICTURES + blob.getKey() + "." + PictureKind.extensionOf(blob.getValue());
            zip.picture(file, bytes);
            rows.add(List.of(blob.getKey(), Cells.text(blob.getValue()), file, String.valueOf(bytes.length)));
        }
        zip.sheet(TablesZip.BLOBS, TablesZip.BLOBS_HEADER, rows);
        return rows.size();
    }
}
