package org.glintery.commands;

import java.util.Optional;

/**
 * Prints one answer of many items without keeping them: several at a time, so that a million don't take a write each. Verb
 * thread only.
 */
final class AnswerList implements AutoCloseable {
    private static final int LUMP = 1 << 16;

    private final Terminal terminal;
    private final Optional<String> field;
    private final StringBuilder waiting = new StringBuilder();
    private boolean begun;

    /** @param field under which the items stand in one JSON object; without one each is a line of its own */
    AnswerList(Terminal terminal, Optional<String> field) {
        this.terminal = terminal;
        this.field = field;
    }

    void add(String item) {
        if (field.isPresent()) {
            waiting.append(begun ? ",\n" : opening() + "\n").append(item);
        } else {
            waiting.append(item).append('\n');
        }
        begun = true;
        if (waiting.length() > LUMP) {
            print();
        }
    }

    /** The list is whole. */
    void end() {
        if (field.isPresent()) {
            waiting.append(begun ? "\n" : opening()).append("]}\n");
        }
    }

    private String opening() {
        return "{\"" + field.orElseThrow() + "\":[";
    }

    /** Prints what is left, also of a list that broke off. */
    @Override
    public void close() {
        if (!waiting.isEmpty()) {
            print();
        }
    }

    private void print() {
        String text = waiting.toString();
        waiting.setLength(0);
        terminal.part(text);
    }
}
