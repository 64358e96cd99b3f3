package org.glintery.records;

import com.fasterxml.jackson.core.JsonParseException;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.exc.StreamConstraintsException;
import com.fasterxml.jackson.databind.JsonMappingException;
import com.fasterxml.jackson.databind.exc.InvalidFormatException;
import com.fasterxml.jackson.databind.exc.ValueInstantiationException;
import java.io.IOException;
import org.glintery.api.MalformedException;

/** Says in plain words what Jackson found wrong, and where. */
final class MalformedWords {
    private static final int MOST_SHOWN = 60;

    private MalformedWords() {}

    static MalformedException of(IOException fault) {
        if (fault.getCause() instanceof MalformedException ours && !(fault instanceof JsonMappingException)) {
            return ours;
        }
        if (fault instanceof JsonMappingException mapping) {
            return new MalformedException(path(mapping) + " " + what(mapping), fault);
        }
        if (fault instanceof StreamConstraintsException) {
            return new MalformedException("the JSON nests deeper than 200 or a part of it is too long", fault);
        }
        if (fault instanceof JsonParseException parse && parse.getLocation() != null) {
            var at = parse.getLocation();
            return new MalformedException("not JSON at line " + at.getLineNr() + ", column " + at.getColumnNr(), fault);
        }
        return new MalformedException("not JSON", fault);
    }

    private static String what(JsonMappingException fault) {
        Throwable cause = fault.getCause();
        if (cause instanceof MalformedException ours) {
            return "is not right: " + ours.getMessage();
        }
        if (fault instanceof ValueInstantiationException && cause != null && cause.getMessage() != null) {
            return "is not right: " + cause.getMessage();
        }
        if (fault instanceof InvalidFormatException format) {
            return "can't be \"" + shown(format.getValue()) + "\"";
        }
        String original = ((JsonProcessingException) fault).getOriginalMessage();
        if (original.startsWith("Missing required creator property") || original.startsWith("Null value for creator")) {
            return "is missing";
        }
        return "is not of the kind that belongs here";
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
        return path.isEmpty() ? "the value" : path.toString();
    }
}
