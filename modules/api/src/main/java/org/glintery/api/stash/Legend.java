package org.glintery.api.stash;

import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.glintery.api.Stable;
import org.glintery.api.workshop.DocumentType;
import org.glintery.api.workshop.Picture;
import org.glintery.api.workshop.Stored;
import org.glintery.api.workshop.View;

/**
 * The lines of a piece's legend, in their printed order. The document has the piece's id.
 *
 * @param photo of the printed legend, to type from
 */
@Stable
public record Legend(List<LegendLine> lines, Optional<Picture> photo) {
    /** More lines are no legend: a chart can't tell them apart. */
    public static final int MOST_LINES = 1_000;

    public static final DocumentType<Legend> TYPE = DocumentType.of("stash", "legend", Legend.class);

    public Legend {
        lines = List.copyOf(lines);
    }

    /** A legend of which there is no photo. */
    public static Legend of(List<LegendLine> lines) {
        return new Legend(lines, Optional.empty());
    }

    public Legend withLines(List<LegendLine> newLines) {
        return new Legend(newLines, photo);
    }

    public static Legend of(View view, UUID piece) {
        return view.find(TYPE, piece).map(Stored::value).orElse(Legend.of(List.of()));
    }

    /** The sum of what is needed; empty when any line's need is unknown or there is no line. */
    public Optional<Long> needed() {
        if (lines.isEmpty() || lines.stream().anyMatch(l -> l.needed().isEmpty())) {
            return Optional.empty();
        }
        return Optional.of(lines.stream().mapToLong(l -> l.needed().get()).sum());
    }
}
