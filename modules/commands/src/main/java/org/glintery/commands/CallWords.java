package org.glintery.commands;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

/** The words of a call as the launcher wrote them down: UTF-8, each ended by a NUL, which no word can hold. */
record CallWords(List<String> words) {

    CallWords {
        words = List.copyOf(words);
    }

    static CallWords of(String... words) {
        return new CallWords(List.of(words));
    }

    static CallWords read(byte[] bytes) {
        List<String> words = new ArrayList<>();
        int start = 0;
        for (int i = 0; i < bytes.length; i++) {
            if (bytes[i] == 0) {
                words.add(new String(bytes, start, i - start, StandardCharsets.UTF_8));
                start = i + 1;
            }
        }
        return new CallWords(words);
    }
}
