package org.glintery.club;

import java.util.UUID;
import org.glintery.api.Preview;
import org.glintery.api.workshop.DocumentType;

/**
 * The club that the maker of this workshop is in. Kept in the workshop; the key is not.
 *
 * @param club the id of its organiser's key
 * @param member the id of the own key
 * @param room the shared folder
 */
@Preview(since = "1.0")
public record Membership(String club, String member, String room) {
    public static final DocumentType<Membership> TYPE = DocumentType.of("club", "membership", Membership.class);

    /** A workshop is in one club. */
    public static final UUID ID = new UUID(0, 1);

    public boolean isOrganiser() {
        return club.equals(member);
    }
}
