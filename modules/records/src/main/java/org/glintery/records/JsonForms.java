package org.glintery.records;

import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.databind.DeserializationContext;
import com.fasterxml.jackson.databind.SerializerProvider;
import com.fasterxml.jackson.databind.deser.std.StdDeserializer;
import com.fasterxml.jackson.databind.jsontype.TypeDeserializer;
import com.fasterxml.jackson.databind.jsontype.TypeSerializer;
import com.fasterxml.jackson.databind.module.SimpleModule;
import com.fasterxml.jackson.databind.ser.std.StdSerializer;
import java.io.IOException;
import org.glintery.api.Json;

/** JSON that a record holds is written as it is: its own kinds are no family of records. */
final class JsonForms extends SimpleModule {
    private static final long serialVersionUID = 1L;

    JsonForms() {
        super("json forms");
        addSerializer(Json.class, new Writing());
        addDeserializer(Json.class, new Reading());
    }

    private static final class Writing extends StdSerializer<Json> {
        private static final long serialVersionUID = 1L;

        Writing() {
            super(Json.class);
        }

        @Override
        public void serialize(Json json, JsonGenerator to, SerializerProvider provider) throws IOException {
            JsonTrees.write(json, to);
        }

        @Override
        public void serializeWithType(Json json, JsonGenerator to, SerializerProvider provider, TypeSerializer type)
                throws IOException {
            JsonTrees.write(json, to);
        }
    }

    private static final class Reading extends StdDeserializer<Json> {
        private static final long serialVersionUID = 1L;

        Reading() {
            super(Json.class);
        }

        @Override
        public Json deserialize(JsonParser parser, DeserializationContext context) throws IOException {
            return JsonTrees.read(parser);
        }

        @Override
        public Json deserializeWithType(JsonParser parser, DeserializationContext context, TypeDeserializer type)
                throws IOException {
            return JsonTrees.read(parser);
        }
    }
}
