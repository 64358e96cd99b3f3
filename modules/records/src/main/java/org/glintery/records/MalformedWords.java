package org.glintery.records;

import com.fasterxml.jackson.core.JsonParseException;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.exc.StreamConstraintsException;
import com.fasterxml.jackson.databind.JsonMappingException;
import com.fasterxml.jackson.databind.exc.InvalidFormatException;
import com.fasterxml.jackson.databind.exc.ValueInstantiationException;
import java.io.IOException;
import org.glintery.api.MalformedException;
import org.openide.util.NbBundle.Messages;

/** Says in plain words what Jackson found wrong, and where. */
@Messages({
    "# {0} - where",
    "# {1} - why not",
    "malformed-value={0} is not right: {1}",
    "# {0} - where",
    "malformed-parts={0} can''t be as it is written: a part of it is out of range, or its parts don''t go together",
    "# {0} - where",
    "# {1} - what stands there",
    "malformed-word={0} can''t be \"{1}\"",
    "# {0} - where",
    "malformed-missing={0} is missing",
    "# {0} - where",
    "malformed-kind={0} is not of the kind that belongs here",
    "malformed-whole=the value",
    "malformed-deep=the JSON nests deeper than 200 or a part of it is too long",
    "# {0} - line",
    "# {1} - column",
    "malformed-json-at=not JSON at line {0}, column {1}",
    "malformed-json=not JSON"
})
final class MalformedWords {
    private static final int MOST_SHOWN = 60;

    private MalformedWords() {}

    static MalformedException of(IOException fault) {
        if (fault.getCause() instanceof MalformedException ours && !(fault instanceof JsonMappingException)) {
            return ours;
        }
        if (fault instanceof JsonMappingException mapping) {
            return new MalformedException(words(path(mapping), mapping), fault);
        }
        if (fault instanceof StreamConstraintsException) {
            return new MalformedException(Bundle.malformed_deep(), fault);
        }
        if (fault instanceof JsonParseException parse && parse.getLocation() != null) {
            var at = parse.getLocation();
            return new MalformedException(
                    Bundle.malformed_json_at(Integer.toString(at.getLineNr()), Integer.toString(at.getColumnNr())),
                    fault);
        }
        return new MalformedException(Bundle.malformed_json(), fault);
    }

    private static String words(String where, JsonMappingException fault) {
        Throwable cause = fault.getCause();
        if (cause instanceof MalformedException ours) {
            return Bundle.malformed_value(where, ours.getMessage());
        }
        if (fault instanceof ValueInstantiationException) { // what a record's code says of it is no sentence of ours
            return Bundle.malformed_parts(where);
        }
        if (fault instanceof InvalidFormatException format) {
            return Bundle.malformed_word(where, shown(format.getValue()));
        }
        String original = ((JsonProcessingException) fault).getOriginalMessage();
        if (original.startsWith("Missing required creator property") || original.startsWith("Null value for creator")) {
            return Bundle.malformed_missing(where);
        }
        return Bundle.malformed_kind(where);
    }

    private static String shown(Object value) {
        String text = String.valueOf(value);
        return text.length() <= MOST_SHOWN ? text : text.substring(0, MOST_SHOWN) + "…";
    }

    private static String path(JsonMappingException fault) {
        var path = new StringBuilder();
        for (var step : fault.getPath()) {
            if (step.getFieldName() == null) {
                path.append('[').append(step.getIndex()).append(']');
            } else {
                path.append(path.isEmpty() ? "" : ".").append(step.getFieldName());
            }
        }
        return path.isEmpty() ? Bundle.malformed_whole() : path.toString();
    }
}
