package org.glintery.finishes.verbs;

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
import org.glintery.api.verb.WrittenDay;
import org.glintery.api.workshop.Picture;
import org.glintery.finishes.FinishFields;
import org.openide.util.NbBundle.Messages;

/** The fields of a finish as options; an empty value empties a field. Used once; not safe for several threads. */
final class FinishOptions {

    private final VerbCall call;
    private Optional<String> misunderstood = Optional.empty();

    FinishOptions(VerbCall call) {
        this.call = call;
    }

    @Messages({
        "FinishOptions.title=what it is called",
        "FinishOptions.started=when it was begun, as 'spring 2023'",
        "FinishOptions.finished=when it was finished, as 'about October 2024'",
        "FinishOptions.score=1 to 5, or none",
        "FinishOptions.making=how it was to make",
        "FinishOptions.altered=what was changed from the design as sold",
        "FinishOptions.tool=a tool it was made with; once for each, in place of those before",
        "FinishOptions.where=where it was made",
        "FinishOptions.photo=adds a photo of the finish; once for each",
        "FinishOptions.sketch=adds a drawing of it; once for each",
        "FinishOptions.comments=anything else",
        "FinishOptions.notLater=no longer waits for a field; once for each",
        "# {0} - the fields",
        "FinishOptions.later=leaves a field for later; once for each: {0}"
    })
    static List<Param> params() {
        return List.of(
                Param.option("title", "TEXT", Bundle.FinishOptions_title()),
                Param.option("started", "DATE", Bundle.FinishOptions_started()),
                Param.option("finished", "DATE", Bundle.FinishOptions_finished()),
                Param.option("score", "N", Bundle.FinishOptions_score()),
                Param.option("making", "TEXT", Bundle.FinishOptions_making()),
                Param.option("altered", "TEXT", Bundle.FinishOptions_altered()),
                Param.option("tool", "TEXT", Bundle.FinishOptions_tool()),
                Param.option("where", "TEXT", Bundle.FinishOptions_where()),
                Param.option("sealing", "WORD", all(Sealing.class)),
                Param.option("photo", "FILE", Bundle.FinishOptions_photo()),
                Param.option("sketch", "FILE", Bundle.FinishOptions_sketch()),
                Param.option("comments", "TEXT", Bundle.FinishOptions_comments()),
                Param.option("later", "FIELD", Bundle.FinishOptions_later(all(Field.class))),
                Param.option("not-later", "FIELD", Bundle.FinishOptions_notLater()));
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

    /** Fields that these options leave for later although something stands in them: what is written does not wait. */
    Set<Field> writtenButLater(Finish now) {
        Set<Field> asked = EnumSet.noneOf(Field.class);
        call.values("later").forEach(word -> word("later", Field.class, word).ifPresent(asked::add));
        asked.removeIf(field -> !FinishFields.isFilled(now, field));
        return asked;
    }

    private String text(String option, String before) {
        return call.value(option).map(String::strip).orElse(before);
    }

    @Messages({
        "# {0} - option",
        "# {1} - what was written",
        "FinishOptions.noDate=--{0} ''{1}'' is not a date. Write it like 2025-03-31, ''about October 2024'' or ''spring 2023''."
    })
    private Optional<About> date(String option, Optional<About> before) {
        Optional<String> written = call.value(option);
        if (written.isEmpty()) {
            return before;
        }
        if (written.get().isBlank()) {
            return Optional.empty();
        }
        Optional<About> said = WrittenDay.of(call, written.get());
        if (said.isEmpty()) {
            wrong(Bundle.FinishOptions_noDate(option, written.get()));
        }
        return said;
    }

    @Messages({
        "# {0} - what was written",
        "FinishOptions.noScore=--score is a whole number from 1 to 5, or none, not ''{0}''."
    })
    private Optional<Integer> score(Optional<Integer> before) {
        Optional<String> written = call.value("score").map(String::strip);
        if (written.isEmpty()) {
            return before;
        }
        if (written.get().isEmpty() || written.get().equalsIgnoreCase("none")) {
            return Optional.empty();
        }
        if (!written.get().matches("[1-5]")) {
            wrong(Bundle.FinishOptions_noScore(written.get()));
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

    @Messages({
        "# {0} - option",
        "# {1} - the words",
        "# {2} - what was written",
        "FinishOptions.noWord=--{0} is one of {1}, not ''{2}''."
    })
    private <E extends Enum<E>> Optional<E> word(String option, Class<E> words, String written) {
        String wanted = written.strip().toLowerCase(Locale.ROOT);
        Optional<E> found = constants(words)
                .filter(word -> FinishWords.written(word).equals(wanted))
                .findFirst();
        if (found.isEmpty()) {
            wrong(Bundle.FinishOptions_noWord(option, all(words), written));
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
