package org.glintery.api.stash;

import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.glintery.api.PlainText;
import org.glintery.api.Stable;
import org.glintery.api.time.About;
import org.glintery.api.workshop.DocumentType;
import org.glintery.api.workshop.Picture;

/**
 * What was bought. Its pieces name it.
 *
 * @param source the shop, or whom it came from
 * @param keptAt the keeping place
 */
@Stable
public record Kit(
        String title,
        Optional<String> source,
        Optional<About> orderedOn,
        Optional<About> arrivedOn,
        Optional<Money> price,
        Optional<Money> postage,
        Optional<UUID> keptAt,
        List<Picture> pictures,
        String notes) {
    public Kit {
        title = PlainText.line(title);
        source = PlainText.line(source);
        notes = PlainText.lines(notes);
        pictures = List.copyOf(pictures);
    }

    public static final DocumentType<Kit> TYPE = DocumentType.of("stash", "kit", Kit.class);

    public static Kit titled(String title) {
        return new Kit(
                title,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                List.of(),
                "");
    }
}
