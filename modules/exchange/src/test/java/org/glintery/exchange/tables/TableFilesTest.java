package org.glintery.exchange.tables;

import static org.assertj.core.api.Assertions.assertThat;
import static org.glintery.exchange.TestWorkshops.refusal;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.UUID;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import org.glintery.api.Json;
import org.glintery.api.JsonCodec;
import org.glintery.api.Result;
import org.glintery.api.stash.Kit;
import org.glintery.api.workshop.ChangeSet;
import org.glintery.api.workshop.DocRef;
import org.glintery.api.workshop.Operation;
import org.glintery.api.workshop.RawDocument;
import org.glintery.api.workshop.Workshop.CopyReport;
import org.glintery.exchange.WholeWorkshop;
import org.junit.jupiter.api.Test;
import org.openide.util.Lookup;

class TableFilesTest extends TablesFixture {
    private final JsonCodec codec = Lookup.getDefault().lookup(JsonCodec.class);

    private void put(String owner, String type, Json... bodies) {
        ChangeSet.Builder change = ChangeSet.named("Put");
        for (int i = 0; i < bodies.length; i++) {
            change.add(new Operation.PutRaw(
                    new RawDocument(new DocRef(owner, type, new UUID(1, i)), 3, (Json.Obj) bodies[i])));
        }
        first.apply(change.build()).orThrow();
    }

    private Json json(String text) {
        return codec.parse(text.replace('\'', '"'));
    }

    private String table(String name) throws IOException {
        try (var file = new ZipFile(zip.toFile())) {
            return new String(file.getInputStream(file.getEntry(name)).readAllBytes(), StandardCharsets.UTF_8);
        }
    }

    @Test
    void bringsBackDocumentsOfAddOns_whateverTheyHold() {
        put(
                "club.x_2-b",
                "péal.1",
                json(
                        "{'b':'','a':null,'n':1.50,'list':[],'map':{},'deep':{'deeper':{}},'t':'~x','q':'=1+1','neg':-0.0}"),
                json(
                        "{'a':'x','b':7,'list':[1,'two',null,[3,[]],{'k':[true]}],'map':{'':1,'a.b':{'z':2}},'deep':{'x':1}}"),
                json("{'list':'not a list','map':[1],'deep':'text','n':'text','1 odd key':{'..':0}}"),
                json("{'deep':{'y':1,'x':2}}"),
                json("{'deep':{'x':1,'y':2}}"),
                json("{}"));
        out().exportTables(zip).orThrow();
        in().importTables(zip).orThrow();
        WholeWorkshop.assertEqual(first, second);
    }

    @Test
    void bringsBackRandomDocuments() {
        long seed = 20_260_118;
        var random = new Random(seed);
        for (int kind = 0; kind < 12; kind++) {
            Json[] bodies = new Json[1 + random.nextInt(15)];
            Arrays.setAll(bodies, i -> object(random, 4));
            put("addon", "kind" + kind, bodies);
        }
        out().exportTables(zip).orThrow();
        try {
            in().importTables(zip).orThrow();
            WholeWorkshop.assertEqual(first, second);
        } catch (AssertionError | RuntimeException e) {
            throw new AssertionError("seed " + seed, e);
        }
    }

    private static Json object(Random random, int depth) {
        List<String> keys = List.of(
                "a", "b", "name", "size", "at", "key", "value", "document", "A", "x.y", "%", "(value)", "item", "");
        Map<String, Json> fields = new LinkedHashMap<>();
        for (int i = random.nextInt(5); i > 0; i--) {
            fields.put(keys.get(random.nextInt(random.nextInt(4) == 0 ? keys.size() : 8)), value(random, depth - 1));
        }
        return new Json.Obj(fields);
    }

    private static Json value(Random random, int depth) {
        List<String> texts = List.of(
                "", "'", "~", "=A1", "-5", " blank ", "a,b;c", "\"", "\r\n", "\n", "é✓😀", "null", "0", "\t", "'=x",
                "\u0000");
        int kind = random.nextInt(depth > 0 ? 9 : 6);
        if (kind >= 7) {
            return object(random, depth);
        }
        if (kind == 6) {
            Json[] items = new Json[random.nextInt(4)];
            Arrays.setAll(items, i -> value(random, depth - 1));
            return new Json.Arr(List.of(items));
        }
        return switch (kind) {
            case 0 -> Json.NULL;
            case 1 -> new Json.Flag(random.nextBoolean());
            case 2 -> new Json.Num(BigDecimal.valueOf(random.nextInt(100_000) - 50_000, random.nextInt(4)));
            default -> new Json.Text(texts.get(random.nextInt(texts.size())));
        };
    }

    @Test
    void readsWellInASpreadsheet() throws IOException {
        WholeWorkshop.fill(first);
        out().exportTables(zip).orThrow();
        assertThat(table("stash.piece.csv"))
                .startsWith("\uFEFFdocument,version,order,title,kit,")
                .contains(",canvas.drilledWidthMm,")
                .contains(",pictures,");
        assertThat(table("stash.piece.pictures.csv")).startsWith("\uFEFFdocument,at,hash,mediaType,caption\r\n");
        assertThat(table("stash.legend.lines.csv")).contains("drill.shape,drill.sizeHundredths");
        assertThat(table("stash.legend.lines.extras.csv")).startsWith("\uFEFFdocument,at,at2,key,(value)\r\n");
        assertThat(table("movements.csv")).startsWith("\uFEFFsequence,").contains("recordedAt");
        assertThat(table("columns.csv")).contains("stash.piece,pictures,list\r\n");
        assertThat(table("README.txt")).startsWith("This zip holds a whole workshop");
        try (var file = new ZipFile(zip.toFile())) {
            for (ZipEntry entry : file.stream().map(ZipEntry.class::cast).toList()) {
                if (entry.getName().endsWith(".csv")) {
                    assertThat(table(entry.getName()).substring(1).split("[,\n]\"?"))
                            .as(entry.getName())
                            .noneMatch(cell -> cell.startsWith("=") || cell.startsWith("+") || cell.startsWith("@"));
                }
            }
        }
    }

    @Test
    void takesTablesBack_thatASpreadsheetHasSavedAgain() throws IOException {
        put(
                "addon",
                "thing",
                json("{'flag':true,'size':2.5,'names':['one','two']}"),
                json("{'flag':false,'names':[]}"));
        out().exportTables(zip).orThrow();
        rewrite((name, bytes) -> {
            String text = new String(bytes, StandardCharsets.UTF_8);
            if (name.equals("addon.thing.csv")) {
                text = text.replace("\uFEFF", "")
                                .replace("true", "TRUE")
                                .replace("2.5", "\"2,5\"")
                                .replace("\r\n", "\n")
                        + ",,,,,\n";
            } else if (name.equals("addon.thing.names.csv")) {
                String[] rows = text.split("\r\n");
                text = rows[0] + "\n" + rows[2] + "\n" + rows[1] + "\n";
            }
            return text.getBytes(StandardCharsets.UTF_8);
        });
        in().importTables(zip).orThrow();
        WholeWorkshop.assertEqual(first, second);
    }

    @Test
    void keepsTheOrderInWhichThingsCame_overAllTablesAndHoweverTheirRowsWereSorted() throws IOException {
        for (int i = 0; i < 6; i++) {
            DocRef ref = new DocRef("addon", "kind" + i % 2, new UUID(7, 100 - i));
            first.apply(ChangeSet.named("Put")
                            .add(new Operation.PutRaw(new RawDocument(ref, 1, (Json.Obj) json("{'a':" + i + "}"))))
                            .build())
                    .orThrow();
        }
        List<DocRef> order = first.view().putOrder();
        out().exportTables(zip).orThrow();
        DocRef byHand = new DocRef("addon", "kind0", new UUID(7, 1));
        spoil("addon.kind0.csv", text -> {
            String[] rows = text.split("\r\n");
            return String.join("\n", rows[0], byHand.id() + ",1,,9", rows[3], rows[1], rows[2]);
        });
        in().importTables(zip).orThrow();
        assertThat(second.view().putOrder())
                .startsWith(order.toArray(DocRef[]::new))
                .endsWith(byHand);
    }

    @Test
    void refusesAWorkshop_thatIsNotEmpty() {
        out().exportTables(zip).orThrow();
        second.apply(ChangeSet.named("Shelve")
                        .create(Kit.TYPE, new UUID(1, 1), Kit.titled("Crane"))
                        .build())
                .orThrow();
        assertThat(refusal(in().importTables(zip)).code()).isEqualTo("not-empty");
    }

    @Test
    void neverWritesOverAFile() throws IOException {
        Files.writeString(zip, "precious");
        assertThat(refusal(out().exportTables(zip)).code()).isEqualTo("file-exists");
        assertThat(Files.readString(zip)).isEqualTo("precious");
    }

    @Test
    void leavesOutAPicture_thatIsGoneOrDamaged_andSaysSo() throws IOException {
        WholeWorkshop.fill(first);
        int all = first.view().blobs().size();
        String picture = first.view().blobs().keySet().iterator().next();
        Path file = first.folder().resolve("pictures").resolve(picture);
        Files.write(file, new byte[] {1}, StandardOpenOption.APPEND);

        Result<CopyReport> written = out().exportTables(zip);

        assertThat(((Result.Ok<CopyReport>) written).warnings())
                .containsExactly("A picture is gone or damaged in this workshop's folder and left out. 'workshop check'"
                        + " tells whose.");
        assertThat(written.orThrow().blobs()).isEqualTo(all - 1);
        assertThat(in().importTables(zip).orThrow().blobs()).isEqualTo(all - 1);
    }
}
