package org.glintery.finishes.verbs;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.StringJoiner;
import java.util.UUID;
import org.glintery.api.finishes.Finish;
import org.glintery.api.finishes.Finish.Field;
import org.glintery.api.finishes.Finish.Sealing;
import org.glintery.api.ledger.Balance;
import org.glintery.api.time.About;
import org.glintery.api.workshop.Picture;
import org.openide.util.NbBundle.Messages;

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
    @Messages({
        "FinishShown.started=Started",
        "FinishShown.finished=Finished",
        "FinishShown.score=Score",
        "FinishShown.making=To make",
        "FinishShown.altered=Altered",
        "FinishShown.tools=Tools",
        "FinishShown.where=Where",
        "FinishShown.sealing=Sealing",
        "FinishShown.pictures=Pictures",
        "FinishShown.comments=Comments",
        "FinishShown.later=Still to be written"
    })
    String text() {
        StringJoiner lines = new StringJoiner("\n");
        lines.add(title);
        add(lines, Bundle.FinishShown_started(), FinishWords.date(startedOn));
        add(lines, Bundle.FinishShown_finished(), FinishWords.date(finishedOn));
        add(lines, Bundle.FinishShown_score(), FinishWords.score(score));
        add(lines, Bundle.FinishShown_making(), making);
        add(lines, Bundle.FinishShown_altered(), altered);
        add(lines, Bundle.FinishShown_tools(), String.join(", ", tools));
        add(lines, Bundle.FinishShown_where(), where.orElse(""));
        add(lines, Bundle.FinishShown_sealing(), FinishWords.sealing(sealing));
        add(lines, Bundle.FinishShown_pictures(), pictures());
        add(lines, Bundle.FinishShown_comments(), comments);
        add(lines, Bundle.FinishShown_later(), FinishWords.fields(later));
        return lines.toString();
    }

    @Messages({
        "# {0} - how many",
        "# {1} - the same in figures",
        "FinishShown.photos={0,choice,1#1 photo|1<{1} photos}",
        "# {0} - how many",
        "# {1} - the same in figures",
        "FinishShown.sketches={0,choice,1#1 sketch|1<{1} sketches}"
    })
    private String pictures() {
        StringJoiner words = new StringJoiner(", ");
        if (!photos.isEmpty()) {
            words.add(Bundle.FinishShown_photos(photos.size(), Balance.grouped(photos.size())));
        }
        if (!sketches.isEmpty()) {
            words.add(Bundle.FinishShown_sketches(sketches.size(), Balance.grouped(sketches.size())));
        }
        return words.toString();
    }

    @Messages({"# {0} - field", "# {1} - what it says", "FinishShown.field={0}: {1}"})
    private static void add(StringJoiner lines, String name, String words) {
        if (!words.isBlank()) {
            lines.add("  " + Bundle.FinishShown_field(name, words));
        }
    }
}
