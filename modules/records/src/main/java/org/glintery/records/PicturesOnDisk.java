package org.glintery.records;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import org.glintery.api.stash.Piece;
import org.glintery.api.workshop.Blob;
import org.openide.util.NbBundle.Messages;

/**
 * The pictures of a workshop as they are found on the disk. One that is gone or was changed is not handed on, and is
 * remembered, so that a copy of everything else can still be made and says what it lacks. Not safe for use by several
 * threads.
 */
@Messages({
    "# {0} - whose",
    "picture-gone=A picture of {0} is missing on the disk. Add it again, or take it from an older backup.",
    "# {0} - whose",
    "picture-damaged=A picture of {0} was changed or damaged on the disk. Add it again, or take it from an older backup.",
    "picture-of-nobody=nothing in particular"
})
final class PicturesOnDisk {
    private static final int MOST_NAMED = 3;

    private final State state;
    private final JacksonCodec codec;
    private final Function<String, Optional<byte[]>> bytes;
    private final Set<String> lost = new LinkedHashSet<>();
    private final List<String> warnings = new ArrayList<>();

    /** @param bytes reads a picture by its hash */
    PicturesOnDisk(State state, JacksonCodec codec, Function<String, Optional<byte[]>> bytes) {
        this.state = state;
        this.codec = codec;
        this.bytes = bytes;
    }

    /** Its bytes, when they are what they were when it came. */
    Optional<byte[]> whole(KeptBlob blob) {
        Optional<byte[]> found = bytes.apply(blob.hash());
        if (found.isPresent() && Blob.hash(found.get()).equals(blob.hash())) {
            return found;
        }
        if (lost.add(blob.hash())) {
            String whose = whose(blob.hash());
            warnings.add(found.isPresent() ? Bundle.picture_damaged(whose) : Bundle.picture_gone(whose));
        }
        return Optional.empty();
    }

    /** The hashes of those that were not whole so far. */
    Set<String> lost() {
        return Set.copyOf(lost);
    }

    /** What to tell of them. */
    List<String> warnings() {
        return List.copyOf(warnings);
    }

    private String whose(String hash) {
        List<String> names = state.documents()
                .present()
                .filter(document ->
                        new String(PackedBody.unpack(document.packed()), StandardCharsets.UTF_8).contains(hash))
                .map(this::name)
                .distinct()
                .limit(MOST_NAMED)
                .toList();
        return names.isEmpty() ? Bundle.picture_of_nobody() : String.join(", ", names);
    }

    /** Its title, or that of the piece that it belongs to, which has the same id. */
    private String name(Document document) {
        return document.body(codec)
                .text("title")
                .or(() -> state.documents()
                        .find(Piece.TYPE.ref(document.ref().id()))
                        .flatMap(piece -> piece.body(codec).text("title")))
                .orElse(document.ref().type());
    }
}
