package org.glintery.exchange.tables;

import java.io.Closeable;
import java.io.IOException;
import java.io.Writer;
import java.util.Base64;
import java.util.LinkedHashMap;
import java.util.Map;
import org.glintery.api.Json;
import org.glintery.api.JsonCodec;

/**
 * Writes the JSON form in which a workshop takes in another one whole. It is the one way in that keeps what no change of a
 * maker's may bring: drills that are set aside though they were lost since.
 */
final class WorkshopJson implements Closeable {
    private final Writer out;
    private final JsonCodec codec;
    private String between = "";

    WorkshopJson(Writer out, JsonCodec codec) throws IOException {
        this.out = out;
        this.codec = codec;
        out.write("{\"format\":\"glintery-workshop\",\"version\":1,\"documents\":[");
    }

    void document(String owner, String type, String id, Json version, Json body) throws IOException {
        Map<String, Json> fields = new LinkedHashMap<>();
        fields.put("owner", new Json.Text(owner));
        fields.put("type", new Json.Text(type));
        fields.put("id", new Json.Text(id));
        fields.put("typeVersion", version);
        fields.put("body", body);
        item(new Json.Obj(fields));
    }

    void beginMovements() throws IOException {
        out.write("],\n\"ledger\":[");
        between = "";
    }

    void movement(Json action) throws IOException {
        item(action);
    }

    void beginPictures() throws IOException {
        out.write("],\n\"blobs\":[");
        between = "";
    }

    void picture(String hash, String mediaType, byte[] bytes) throws IOException {
        Map<String, Json> fields = new LinkedHashMap<>();
        fields.put("hash", new Json.Text(hash));
        fields.put("mediaType", new Json.Text(mediaType));
        fields.put("bytes", new Json.Text(Base64.getEncoder().encodeToString(bytes)));
        item(new Json.Obj(fields));
    }

    private void item(Json item) throws IOException {
        out.write(between);
        out.write(codec.compact(item));
        between = ",\n";
    }

    @Override
    public void close() throws IOException {
        out.write("]}");
        out.close();
    }
}
