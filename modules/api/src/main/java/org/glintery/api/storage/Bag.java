package org.glintery.api.storage;

import java.util.Optional;
import java.util.UUID;
import org.glintery.api.PlainText;
import org.glintery.api.Stable;
import org.glintery.api.workshop.DocumentType;

/**
 * A bag or any other loose packet.
 *
 * @param ofPiece the piece whose kit it came with
 * @param repairFor the piece it is the repair packet of
 */
@Stable
public record Bag(String name, Optional<UUID> keptAt, Optional<UUID> ofPiece, Optional<UUID> repairFor) {
    public static final DocumentType<Bag> TYPE = DocumentType.of("storage", "bag", Bag.class);

    public Bag {
        name = PlainText.line(name);
    }

    public Bag withName(String newName) {
        return new Bag(newName, keptAt, ofPiece, repairFor);
    }

    /** Whether its drills stay with a piece for the day one pops off. */
    public boolean isRepairPacket() {
        return repairFor.isPresent();
    }

    public static Bag named(String name) {
        return new Bag(name, Optional.empty(), Optional.empty(), Optional.empty());
    }
}
