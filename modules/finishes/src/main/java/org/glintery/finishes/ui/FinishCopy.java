package org.glintery.finishes.ui;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.glintery.api.finishes.Finish;
import org.glintery.api.finishes.Finish.Field;
import org.glintery.api.finishes.Finish.Sealing;
import org.glintery.api.time.About;
import org.glintery.api.workshop.Picture;

/** A finish while it is being edited: one field is set, the others stay. Not safe for use by several threads. */
final class FinishCopy {

    String title;
    Optional<About> startedOn;
    Optional<About> finishedOn;
    Optional<Integer> score;
    String making;
    String altered;
    List<String> tools;
    Optional<String> where;
    Sealing sealing;
    final List<Picture> photos;
    final List<Picture> sketches;
    String comments;
    final Set<Field> later = EnumSet.noneOf(Field.class);

    FinishCopy(Finish finish) {
        title = finish.title();
        startedOn = finish.startedOn();
        finishedOn = finish.finishedOn();
        score = finish.score();
        making = finish.making();
        altered = finish.altered();
        tools = finish.tools();
        where = finish.where();
        sealing = finish.sealing();
        photos = new ArrayList<>(finish.photos());
        sketches = new ArrayList<>(finish.sketches());
        comments = finish.comments();
        later.addAll(finish.later());
    }

    Finish finish() {
        return new Finish(
                title,
                startedOn,
                finishedOn,
                score,
                making,
                altered,
                tools,
                where,
                sealing,
                photos,
                sketches,
                comments,
                later);
    }
}
