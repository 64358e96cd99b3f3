package org.glintery.api.workshop;

import java.util.List;
import java.util.Locale;
import java.util.UUID;
import java.util.function.Function;
import org.glintery.api.PlainText;
import org.glintery.api.Result;
import org.glintery.api.Stable;
import org.glintery.api.internal.Wording;

/** Finds a document by its id or by an unambiguous name. Pure; any thread. */
@Stable
public final class ByName {
    private ByName() {}

    /**
     * The document whose id, or whose name (case and outer blanks aside), is the text. A part of a name is never
     * enough: it might become somebody else's name tomorrow. Refused with {@code unknown-name} or
     * {@code ambiguous-name}, whose text lists the candidates.
     */
    public static <T extends Record> Result<Stored<T>> find(
            View view, DocumentType<T> type, Function<T, String> name, String written) {
        List<Stored<T>> all = view.all(type);
        String wanted = lower(written);
        for (Stored<T> one : all) {
            if (one.id().toString().equals(wanted)) {
                return Result.ok(one);
            }
        }
        List<Stored<T>> hits = wanted.isEmpty()
                ? List.of()
                : matching(all, s -> lower(name.apply(s.value())).equals(wanted));
        if (hits.size() == 1) {
            return Result.ok(hits.get(0));
        }
        if (hits.isEmpty()) {
            return Result.refused("unknown-name", Wording.of(ByName.class, "none", type.name(), written.strip()));
        }
        return Result.refused(
                "ambiguous-name",
                Wording.of(ByName.class, "several", written.strip(), String.join(", ", candidates(hits, name))));
    }

    /** What may have been meant: the names that hold the text, each with its id, at most twelve. */
    public static <T extends Record> List<String> candidates(
            View view, DocumentType<T> type, Function<T, String> name, String written) {
        String wanted = lower(written);
        return candidates(
                matching(view.all(type), s -> lower(name.apply(s.value())).contains(wanted)), name);
    }

    private static <T extends Record> List<String> candidates(List<Stored<T>> found, Function<T, String> name) {
        return found.stream()
                .limit(12)
                .map(s -> Wording.of(ByName.class, "candidate", name.apply(s.value()), s.id().toString()))
                .toList();
    }

    /** A stable id made from a name, for documents of which there is one a name. */
    public static UUID idFor(DocumentType<?> type, String name) {
        String text = type.owner() + "/" + type.name() + "/" + name;
        return UUID.nameUUIDFromBytes(text.getBytes(java.nio.charset.StandardCharsets.UTF_8));
    }

    private static <T extends Record> List<Stored<T>> matching(
            List<Stored<T>> all, java.util.function.Predicate<Stored<T>> test) {
        return all.stream().filter(test).toList();
    }

    private static String lower(String name) {
        return PlainText.line(name).strip().toLowerCase(Locale.ROOT);
    }
}
