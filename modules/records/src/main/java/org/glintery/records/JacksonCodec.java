package org.glintery.records;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.ObjectReader;
import java.io.IOException;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import org.glintery.api.Json;
import org.glintery.api.JsonCodec;
import org.glintery.api.MalformedException;
import org.openide.util.NbBundle.Messages;
import org.openide.util.lookup.ServiceProvider;

/** JSON by Jackson. Any thread. */
@Messages({
    "codec-long=it is longer than 64 MiB",
    "# {0} - kind of value",
    "codec-unwritable=a value of the kind {0} can''t be written as JSON",
    "codec-missing=a value is missing",
    "codec-object=it should be an object, with a brace at its beginning"
})
@ServiceProvider(service = JsonCodec.class)
public final class JacksonCodec implements JsonCodec {
    /** The longest text that is read, in bytes as in characters. */
    static final int MOST_TEXT = 64 << 20;

    private static final ObjectMapper MAPPER = RecordMapping.mapper();
    /** For what was written from {@link Json}, where no name can stand twice: looking out for that takes a tenth of reading. */
    private static final ObjectReader OWN = MAPPER.reader().without(StreamReadFeature.STRICT_DUPLICATE_DETECTION);

    @Override
    public Json parse(String text) {
        if (text.length() > MOST_TEXT) {
            throw new MalformedException(Bundle.codec_long());
        }
        try (var parser = MAPPER.createParser(text)) {
            return JsonTrees.readWhole(parser);
        } catch (IOException e) {
            throw MalformedWords.of(e);
        }
    }

    @Override
    public String compact(Json json) {
        return write(json, false);
    }

    @Override
    public String pretty(Json json) {
        return write(json, true);
    }

    private static String write(Json json, boolean forPeople) {
        var text = new StringWriter();
        try (var generator = MAPPER.createGenerator(text)) {
            if (forPeople) {
                var indenter = new DefaultIndenter("  ", "\n");
                generator.setPrettyPrinter(
                        new DefaultPrettyPrinter().withObjectIndenter(indenter).withArrayIndenter(indenter));
            }
            JsonTrees.write(json, generator);
        } catch (IOException e) {
            throw MalformedWords.of(e);
        }
        return text.toString();
    }

    @Override
    public Json toJson(Object value) {
        if (value instanceof Json json) {
            return json;
        }
        try {
            return JsonTrees.of(MAPPER.valueToTree(value));
        } catch (IllegalArgumentException e) {
            throw new MalformedException(
                    Bundle.codec_unwritable(value.getClass().getSimpleName()), e);
        }
    }

    @Override
    public <T> T fromJson(Json json, Class<T> type) {
        if (type == Json.class || type.getEnclosingClass() == Json.class) {
            return type.cast(json);
        }
        return decode(encode(json), type);
    }

    /** Compact JSON in UTF-8. */
    byte[] encode(Json json) {
        return compact(json).getBytes(StandardCharsets.UTF_8);
    }

    /** Reads a record straight from UTF-8 that {@link #encode} wrote. */
    <T> T decode(byte[] utf8, Class<T> type) {
        try {
            T value = OWN.forType(type).readValue(utf8);
            if (value == null) {
                throw new MalformedException(Bundle.codec_missing());
            }
            return value;
        } catch (JsonProcessingException e) {
            throw MalformedWords.of(e);
        } catch (IOException e) {
            throw new MalformedException(Bundle.malformed_json(), e);
        }
    }

    Json.Obj object(byte[] utf8) {
        if (parse(new String(utf8, StandardCharsets.UTF_8)) instanceof Json.Obj object) {
            return object;
        }
        throw new MalformedException(Bundle.codec_object());
    }

    /** For files that are read and written piece by piece. */
    static ObjectMapper mapper() {
        return MAPPER;
    }
}
