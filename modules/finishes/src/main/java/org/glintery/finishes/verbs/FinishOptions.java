package org.glintery.finishes.verbs;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.glintery.api.finishes.Finish;
import org.glintery.api.finishes.Finish.Field;
import org.glintery.api.finishes.Finish.Sealing;
import org.glintery.api.time.About;
import org.glintery.api.verb.Param;
import org.glintery.api.verb.VerbCall;
import org.glintery.api.workshop.Picture;

/** The fields of a finish as options; an empty value empties a field. Used once; not safe for several threads. */
final class FinishOptions {

    static final List<Param> PARAMS = List.of(
            Param.option("title", "TEXT", "what it is called"),
            Param.option("started", "DATE", "when it was begun, as 'spring 2023'"),
            Param.option("finished", "DATE", "when it was finished, as 'about October 2024'"),
            Param.option("score", "N", "1 to 5, or none"),
            Param.option("making", "TEXT", "how it was to make"),
            Param.option("altered", "TEXT", "what was changed from the design as sold"),
            Param.option("tool", "TEXT", "a tool it was made with; once for each, in place of those before"),
            Param.option("where", "TEXT", "where it was made"),
            Param.option("sealing", "WORD", all(Sealing.class)),
            Param.option("photo", "FILE", "adds a photo of the finish; once for each"),
            Param.option("sketch", "FILE", "adds a drawing of it; once for each"),
            Param.option("comments", "TEXT", "anything else"),
            Param.option("later", "FIELD", "leaves a field for later; once for each: " + all(Field.class)),
            Param.option("not-later", "FIELD", "no longer waits for a field; once for each"));

    private final VerbCall call;
    private Optional<String> misunderstood = Optional.empty();

    FinishOptions(VerbCall call) {
        this.call = call;
    }

    /** What was first not understood; what {@link #over} gave is then not to be used. */
    Optional<String> misunderstood() {
        return misunderstood;
    }

    /** The finish with what the options say in place of what it said before. */
    Finish over(Finish before, GivenPictures given) {
        return new Finish(
                text("title", before.title()),
                date("started", before.startedOn()),
                date("finished", before.finishedOn()),
                score(before.score()),
                text("making", before.making()),
                text("altered", before.altered()),
                tools(before.tools()),
                call.value("where").map(String::strip).or(before::where).filter(where -> !where.isEmpty()),
                call.value("sealing")
                        .flatMap(word -> word("sealing", Sealing.class, word))
                        .orElse(before.sealing()),
                both(before.photos(), given.photos()),
                both(before.sketches(), given.sketches()),
                text("comments", before.comments()),
                later(before.later()));
    }

    private String text(String option, String before) {
        return call.value(option).map(String::strip).orElse(before);
    }

    private Optional<About> date(String option, Optional<About> before) {
        Optional<String> written = call.value(option);
        if (written.isEmpty()) {
            return before;
        }
        if (written.get().isBlank()) {
            return Optional.empty();
        }
        Optional<About> said = About.said(written.get(), LocalDate.now(call.clock()));
        if (said.isEmpty()) {
            wrong("--" + option + " '" + written.get()
                    + "' is not a date. Write it like 2025-03-31, 'about October 2024' or 'spring 2023'.");
        }
        return said;
    }

    private Optional<Integer> score(Optional<Integer> before) {
        Optional<String> written = call.value("score").map(String::strip);
        if (written.isEmpty()) {
            return before;
        }
        if (written.get().isEmpty() || written.get().equalsIgnoreCase("none")) {
            return Optional.empty();
        }
        if (!written.get().matches("[1-5]")) {
            wrong("--score is a whole number from 1 to 5, or none, not '" + written.get() + "'.");
            return before;
        }
        return Optional.of(Integer.valueOf(written.get()));
    }

    private List<String> tools(List<String> before) {
        List<String> written = call.values("tool");
        return written.isEmpty()
                ? before
                : written.stream()
                        .map(String::strip)
                        .filter(tool -> !tool.isEmpty())
                        .toList();
    }

    private Set<Field> later(Set<Field> before) {
        Set<Field> later = EnumSet.noneOf(Field.class);
        later.addAll(before);
        call.values("later").forEach(word -> word("later", Field.class, word).ifPresent(later::add));
        call.values("not-later")
                .forEach(word -> word("not-later", Field.class, word).ifPresent(later::remove));
        return later;
    }

    private static List<Picture> both(List<Picture> before, List<Picture> more) {
        List<Picture> both = new ArrayList<>(before);
        more.stream()
                .filter(picture -> both.stream().noneMatch(b -> b.hash().equals(picture.hash())))
                .forEach(both::add);
        return both;
    }

    private <E extends Enum<E>> Optional<E> word(String option, Class<E> words, String written) {
        String wanted = written.strip().toLowerCase(Locale.ROOT);
        Optional<E> found = constants(words)
                .filter(word -> FinishWords.written(word).equals(wanted))
                .findFirst();
        if (found.isEmpty()) {
            wrong("--" + option + " is one of " + all(words) + ", not '" + written + "'.");
        }
        return found;
    }

    private void wrong(String text) {
        misunderstood = misunderstood.or(() -> Optional.of(text));
    }

    private static <E extends Enum<E>> Stream<E> constants(Class<E> words) {
        return Arrays.stream(words.getEnumConstants());
    }

    private static <E extends Enum<E>> String all(Class<E> words) {
        return constants(words).map(FinishWords::written).collect(Collectors.joining(", "));
    }
}
