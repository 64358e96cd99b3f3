package org.glintery.application;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The string literals of a Java source, each with the calls it stands in. */
final class SourceStrings {
    private static final Pattern TOKEN = Pattern.compile("(?s)//[^\n]*|/\\*.*?\\*/"
            + "|\"\"\"(?<block>.*?[^\\\\])\"\"\"|\"(?<plain>(?:[^\"\\\\\n]|\\\\.)*)\"|'(?:[^'\\\\\n]|\\\\.[0-9a-f]*)'"
            + "|(?<open>[@\\w$.]*)\\s*\\(|(?<close>\\))");
    private static final Pattern SENTENCE = Pattern.compile("(?s)\\s*[A-Z][\\w']* .*[.?]\\s*");
    private static final Pattern PIECE = Pattern.compile("(?s) .*[A-Za-z]{3}.*|.*[A-Za-z]{3}.* ");
    /** Constraints of the layout manager. */
    private static final Pattern LAYOUT = Pattern.compile(
            "[, ]*(insets|wrap|fill|fillx|grow|growx|gap|gap[a-z]+|hmin|hmax|wmin|wmax|h|w|top|span\\w?)\\b.*");

    private static final Pattern STATEMENT = Pattern.compile(
            "(?s)[\\s+(]*(select|insert|update|delete|merge|create|alter|from|where|order|and|or|join|backup|"
                    + "checkpoint|shutdown|primary|reverses,|from_\\w+,?|to_\\w+|type_\\w+"
                    + "|\\w+ (int|bigint|tinyint|varchar|boolean)|; *) .*");

    /** @param calls what it is an argument of, innermost first */
    record Literal(String text, List<String> calls) {
        boolean isForPeople() {
            return (SENTENCE.matcher(text).matches() || PIECE.matcher(text).matches())
                    && !STATEMENT.matcher(text).matches()
                    && !LAYOUT.matcher(text).matches()
                    && !text.contains("='")
                    && calls.stream().noneMatch(Literal::isForProgrammers);
        }

        private static boolean isForProgrammers(String call) {
            return call.startsWith("@")
                    || call.startsWith("LOG.")
                    || call.endsWith("Exception")
                    || call.endsWith("Error")
                    || call.startsWith("Pattern.")
                    || call.endsWith("Thread")
                    || call.endsWith(".equals")
                    || call.equals("super")
                    || call.endsWith(".replaceFirst")
                    || call.endsWith(".matches")
                    || call.endsWith("prepareStatement");
        }
    }

    private SourceStrings() {}

    static List<Literal> of(String source) {
        List<Literal> literals = new ArrayList<>();
        Deque<String> calls = new ArrayDeque<>();
        for (Matcher token = TOKEN.matcher(source); token.find(); ) {
            String text = token.group("block") == null ? token.group("plain") : token.group("block");
            if (text != null) {
                literals.add(new Literal(text, List.copyOf(calls)));
            } else if (token.group("open") != null) {
                calls.push(token.group("open"));
            } else if (token.group("close") != null) {
                calls.poll();
            }
        }
        return literals;
    }
}
