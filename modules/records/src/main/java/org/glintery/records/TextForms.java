package org.glintery.records;

import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.databind.DeserializationContext;
import com.fasterxml.jackson.databind.deser.std.StdScalarDeserializer;
import com.fasterxml.jackson.databind.module.SimpleModule;
import com.fasterxml.jackson.databind.ser.std.ToStringSerializer;
import java.io.IOException;
import java.util.function.Function;
import org.glintery.api.MalformedException;
import org.glintery.api.ledger.Spot;
import org.glintery.api.time.About;
import org.openide.util.NbBundle.Messages;

/** Spots and dates are their text. */
@Messages({"# {0} - what was written", "text-no-date=''{0}'' is not a date"})
final class TextForms extends SimpleModule {
    private static final long serialVersionUID = 1L;

    TextForms() {
        super("text forms");
        addSerializer(Spot.class, new ToStringSerializer(Spot.class));
        addSerializer(About.class, new ToStringSerializer(About.class));
        addDeserializer(Spot.class, new FromText<>(Spot.class, Spot::parse));
        addDeserializer(About.class, new FromText<>(About.class, TextForms::date));
    }

    private static About date(String text) {
        return About.edtf(text).orElseThrow(() -> new MalformedException(Bundle.text_no_date(text)));
    }

    private static final class FromText<T> extends StdScalarDeserializer<T> {
        private static final long serialVersionUID = 1L;
        private final transient Function<String, T> parse;

        FromText(Class<T> type, Function<String, T> parse) {
            super(type);
            this.parse = parse;
        }

        @Override
        public T deserialize(JsonParser parser, DeserializationContext context) throws IOException {
            if (!parser.hasToken(JsonToken.VALUE_STRING)) {
                return context.reportInputMismatch(this, "text expected");
            }
            try {
                return parse.apply(parser.getText());
            } catch (MalformedException e) {
                throw context.weirdStringException(parser.getText(), handledType(), "malformed");
            }
        }
    }
}
