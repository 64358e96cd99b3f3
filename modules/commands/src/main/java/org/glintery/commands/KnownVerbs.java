package org.glintery.commands;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Map;
import java.util.Properties;
import java.util.TreeMap;

/**
 * The verbs of our own features, also of those that are switched off: read from {@code verbs.properties}, which a test
 * of the packaged application compares with what the features bring.
 *
 * @param featureByVerb verb to feature
 */
record KnownVerbs(Map<String, String> featureByVerb) {

    KnownVerbs {
        featureByVerb = Map.copyOf(featureByVerb);
    }

    static KnownVerbs ours() {
        Properties read = new Properties();
        try (InputStream in = KnownVerbs.class.getResourceAsStream("verbs.properties")) {
            read.load(in);
        } catch (IOException e) {
            throw new UncheckedIOException("verbs.properties can't be read", e);
        }
        Map<String, String> features = new TreeMap<>();
        read.forEach((verb, feature) -> features.put(verb.toString().replace('-', ' '), feature.toString()));
        return new KnownVerbs(features);
    }
}
