package org.glintery.application;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Properties;
import java.util.jar.JarFile;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What stands in the bundles of the shipped jars comes out as it is meant: no apostrophe is lost, no number is raw. */
class BundlesTest {

    /** Fewer would mean that not all of them were read. */
    private static final int LEAST_MESSAGES = 1_000;

    @Test
    void saysWhatItMeans() throws IOException {
        List<String> faults = new ArrayList<>();
        int messages = 0;
        for (Path jar : jars()) {
            Properties all = messages(jar);
            messages += all.size();
            for (String key : all.stringPropertyNames()) {
                fault(jar, all.getProperty(key))
                        .ifPresent(fault -> faults.add(jar.getFileName() + " " + key + ": " + fault));
            }
        }
        assertThat(faults).isEmpty();
        assertThat(messages).as("messages read").isGreaterThanOrEqualTo(LEAST_MESSAGES);
    }

    private static Optional<String> fault(Path jar, String message) {
        return jar.equals(Jars.of("api")) ? MessageFault.of(message, true) : MessageFault.of(message);
    }

    @Test
    void knowsThatApiFormatsAllOfItsMessages() {
        assertThat(fault(Jars.of("api"), "This can't be read.")).isPresent();
        assertThat(fault(Jars.of("api"), "This can''t be read.")).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "{0} can't be read.",
                "This can''t be read.",
                "{0,choice,1#One row can''t|1<{1} rows can''t} be read.",
                "{0,choice,1#One row|1<{0} rows}",
                "{1} holds {0,choice,0#none|1#one|1<{0} of them}"
            })
    void findsAFaultThatIsThere(String message) {
        assertThat(MessageFault.of(message)).isPresent();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "{0} can''t be read.",
                "This can't be read.",
                "{0,choice,1#One row|1<{1} rows} can''t be read, until {0,choice,1#it is|1<they are} right.",
                "{0,choice,1#it can''t|1<they can''t} be read"
            })
    void findsNoFaultInASoundMessage(String message) {
        assertThat(MessageFault.of(message)).isEmpty();
    }

    private static List<Path> jars() {
        return Stream.concat(Jars.modules().stream().map(Jars::of), Stream.of(Jars.SAMPLE, Jars.CLUB, Jars.SWAPS))
                .toList();
    }

    private static Properties messages(Path path) throws IOException {
        Properties all = new Properties();
        try (JarFile jar = new JarFile(path.toFile())) {
            for (var entry : jar.stream()
                    .filter(one -> one.getName().endsWith("/Bundle.properties"))
                    .toList()) {
                Properties bundle = new Properties();
                try (InputStream in = jar.getInputStream(entry)) {
                    bundle.load(in);
                }
                bundle.forEach((key, value) -> all.put(entry.getName() + " " + key, value));
            }
        }
        return all;
    }
}
