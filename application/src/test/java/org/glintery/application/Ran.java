package org.glintery.application;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.util.List;

/** How a call of {@code glintery-do} ended and what it printed. */
record Ran(int code, String out, String err) {

    private static final ObjectMapper MAPPER =
            new ObjectMapper().enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS);

    static JsonNode parse(String text) {
        try {
            return MAPPER.readTree(text);
        } catch (JsonProcessingException e) {
            throw new AssertionError("not one JSON value: " + text, e);
        }
    }

    /** Exit 0, or the test fails with all that was said. */
    Ran done() {
        assertThat(code).as("%s%s", out, err).isZero();
        return this;
    }

    /** Exit 1 or 2 with a sentence for people and no trace of our insides. */
    Ran refused(int expectedCode, String... words) {
        assertThat(code).as("%s%s", out, err).isEqualTo(expectedCode);
        String said = out + err;
        assertThat(said.strip()).isNotEmpty();
        assertThat(said).doesNotContain("Exception", "\tat ", "null");
        for (String word : words) {
            assertThat(said).contains(word);
        }
        return this;
    }

    /** Standard output as the one JSON object it has to be. */
    JsonNode json() {
        JsonNode node = parse(out);
        assertThat(node.isObject()).as(out).isTrue();
        return node;
    }

    /** Standard output as one JSON object a line. */
    List<JsonNode> lines() {
        return out.lines().map(Ran::parse).toList();
    }
}
