package org.glintery.finishes.verbs;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.StringJoiner;
import java.util.UUID;
import org.glintery.api.finishes.Finish;
import org.glintery.api.finishes.Finish.Field;
import org.glintery.api.finishes.Finish.Sealing;
import org.glintery.api.time.About;
import org.glintery.api.workshop.Picture;

/**
 * The record of a made piece.
 *
 * @param later fields that are still to be written
 */
public record FinishShown(
        UUID piece,
        String title,
        Optional<About> startedOn,
        Optional<About> finishedOn,
        Optional<Integer> score,
        String making,
        String altered,
        List<String> tools,
        Optional<String> where,
        Sealing sealing,
        List<Picture> photos,
        List<Picture> sketches,
        String comments,
        Set<Field> later) {

    static FinishShown of(UUID piece, Finish finish) {
        return new FinishShown(
                piece,
                finish.title(),
                finish.startedOn(),
                finish.finishedOn(),
                finish.score(),
                finish.making(),
                finish.altered(),
                finish.tools(),
                finish.where(),
                finish.sealing(),
                finish.photos(),
                finish.sketches(),
                finish.comments(),
                finish.later());
    }

    /** One line for each field that says something. */
    String text() {
        StringJoiner lines = new StringJoiner("\n");
        lines.add(title);
        add(lines, "Started", FinishWords.date(startedOn));
        add(lines, "Finished", FinishWords.date(finishedOn));
        add(lines, "Score", FinishWords.score(score));
        add(lines, "To make", making);
        add(lines, "Altered", altered);
        add(lines, "Tools", String.join(", ", tools));
        add(lines, "Where", where.orElse(""));
        add(lines, "Sealing", FinishWords.sealing(sealing));
        add(lines, "Pictures", pictures());
        add(lines, "Comments", comments);
        add(lines, "Still to be written", FinishWords.fields(later));
        return lines.toString();
    }

    private String pictures() {
        StringJoiner words = new StringJoiner(", ");
        if (!photos.isEmpty()) {
            words.add(photos.size() == 1 ? "1 photo" : photos.size() + " photos");
        }
        if (!sketches.isEmpty()) {
            words.add(sketches.size() == 1 ? "1 sketch" : sketches.size() + " sketches");
        }
        return words.toString();
    }

    private static void add(StringJoiner lines, String name, String words) {
        if (!words.isBlank()) {
            lines.add("  " + name + ": " + words);
        }
    }
}
