package org.glintery.records;

import java.util.Arrays;
import java.util.Map;
import java.util.OptionalInt;
import java.util.concurrent.ConcurrentHashMap;

/**
 * Gives each distinct value a small number, from 0, and keeps it for ever. The writer thread adds; any
 * thread reads. What was added by a change that then failed stays, and is saved with the next one.
 */
final class NumberedNames<T> {
    private final Map<T, Integer> numbers = new ConcurrentHashMap<>();
    private volatile Object[] values = new Object[64];
    private volatile int size;
    private int saved;

    /** The number of a value, a new one if need be. Writer thread. */
    int number(T value) {
        Integer known = numbers.get(value);
        if (known != null) {
            return known;
        }
        int next = size;
        if (next == values.length) {
            values = Arrays.copyOf(values, next * 2);
        }
        values[next] = value;
        size = next + 1;
        numbers.put(value, next);
        return next;
    }

    OptionalInt find(T value) {
        Integer number = numbers.get(value);
        return number == null ? OptionalInt.empty() : OptionalInt.of(number);
    }

    @SuppressWarnings("unchecked")
    T value(int number) {
        return (T) values[number];
    }

    int size() {
        return size;
    }

    /** The first number that is not on disk yet. Writer thread. */
    int firstUnsaved() {
        return saved;
    }

    /** Says that all numbers below are on disk. Writer thread. */
    void savedUpTo(int number) {
        saved = number;
    }
}
