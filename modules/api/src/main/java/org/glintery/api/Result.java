package org.glintery.api;

import java.util.List;
import java.util.function.Function;

/** A value with what the user should hear about it, or the refusal to give one. */
@Stable
public sealed interface Result<T> {

    /**
     * @param warnings plain sentences; what they warn of was done nevertheless
     */
    record Ok<T>(T value, List<String> warnings) implements Result<T> {
        public Ok {
            warnings = List.copyOf(warnings);
        }
    }

    record Refused<T>(Refusal refusal) implements Result<T> {}

    static <T> Result<T> ok(T value) {
        return new Ok<>(value, List.of());
    }

    static <T> Result<T> ok(T value, List<String> warnings) {
        return new Ok<>(value, warnings);
    }

    static <T> Result<T> refused(String code, String text) {
        return new Refused<>(new Refusal(code, text));
    }

    static <T> Result<T> refused(Refusal refusal) {
        return new Refused<>(refusal);
    }

    /** Goes on with the value; warnings of both steps are kept. */
    default <U> Result<U> then(Function<? super T, Result<U>> next) {
        if (this instanceof Ok<T> ok) {
            Result<U> after = next.apply(ok.value());
            if (after instanceof Ok<U> good && !ok.warnings().isEmpty()) {
                var all = new java.util.ArrayList<>(ok.warnings());
                all.addAll(good.warnings());
                return new Ok<>(good.value(), all);
            }
            return after;
        }
        return new Refused<>(((Refused<T>) this).refusal());
    }

    /** The value. A refusal throws: for callers that know there can be none, such as tests. */
    default T orThrow() {
        if (this instanceof Ok<T> ok) {
            return ok.value();
        }
        Refusal refusal = ((Refused<T>) this).refusal();
        throw new GlinteryException(refusal.code() + ": " + refusal.text());
    }
}
