package org.glintery.club;

import java.io.IOException;
import java.util.Optional;
import org.glintery.api.Json;
import org.glintery.api.Preview;
import org.glintery.api.Result;
import org.glintery.api.workshop.ChangeSet;
import org.glintery.api.workshop.Derived;
import org.glintery.api.workshop.Stored;
import org.glintery.api.workshop.View;
import org.glintery.club.signing.KeyFolder;
import org.glintery.club.signing.MemberKey;
import org.openide.util.NbBundle.Messages;

/**
 * The club as add-ons use it: what counts in it, and writing documents of one's own. It computes changes of the workshop and
 * applies none; what is written goes into the room the next time it is looked into, so all of it works without a network.
 */
@Preview(since = "1.0")
public final class Club {
    private static final Derived<RoomCopy> COPY = Club::read;

    /** The club that this workshop is in. Any thread. */
    public Optional<Membership> membership(View view) {
        return view.find(Membership.TYPE, Membership.ID).map(Stored::value);
    }

    /** What is held of the club's documents; nothing while the workshop is in no club. Any thread. */
    public RoomCopy copy(View view) {
        return view.derived(COPY);
    }

    private static RoomCopy read(View view) {
        return RoomCopy.of(
                view.find(Membership.TYPE, Membership.ID)
                        .map(stored -> stored.value().club())
                        .orElse(""),
                view.all(HeldDocument.TYPE).stream()
                        .map(stored -> stored.value().text())
                        .toList());
    }

    /**
     * Writes a document in the maker's own name, new or in place of an older one. Refused with {@code no-club}, {@code no-key}
     * or {@code too-large}. Reads the key; not on the event thread.
     */
    @Messages("Club.written=Write to the club")
    public Result<ChangeSet> write(View view, String kind, String name, Json.Obj body) {
        return key(view).then(key -> kept(view, copy(view).with(key, kind, name, body), Bundle.Club_written()));
    }

    /** Takes a document of the maker's own back. Refused as {@link #write} is. Reads the key; not on the event thread. */
    @Messages("Club.removed=Take back from the club")
    public Result<ChangeSet> remove(View view, String kind, String name) {
        return key(view).then(key -> kept(view, copy(view).without(key, kind, name), Bundle.Club_removed()));
    }

    /** The change after which a copy is held. Refused with {@code too-large} when a document in it is. */
    @Messages({
        "Club.large=That is more than one document of a club may hold, so nothing was written. Say it in fewer words or lines."
    })
    public Result<ChangeSet> kept(View view, RoomCopy copy, String sentence) {
        RoomCopy before = copy(view);
        ChangeSet.Builder change = ChangeSet.named(sentence);
        for (SignedDocument document : copy.held()) {
            if (before.held().contains(document)) {
                continue;
            }
            String text = document.text();
            if (Judgement.of(copy.club(), text).document().isEmpty()
                    || text.getBytes(java.nio.charset.StandardCharsets.UTF_8).length > SignedDocument.MOST_BYTES) {
                return Result.refused("too-large", Bundle.Club_large());
            }
            change.put(HeldDocument.TYPE, HeldDocument.idOf(document.id()), new HeldDocument(text));
        }
        return Result.ok(change.build());
    }

    @Messages({
        "Club.none=This workshop is in no club yet. 'club new' starts one, 'club join' joins one.",
        "Club.noKey=Your key is not on this computer, so nothing can be signed. 'club join --recover' brings it back from your "
                + "recovery sheet."
    })
    /** For the club's own verbs. Reads the key; not on the event thread. */
    public Result<MemberKey> key(View view) {
        Optional<Membership> membership = membership(view);
        if (membership.isEmpty()) {
            return Result.refused("no-club", Bundle.Club_none());
        }
        try {
            return KeyFolder.ofTheUser()
                    .find(membership.get().member())
                    .map(Result::ok)
                    .orElseGet(() -> Result.refused("no-key", Bundle.Club_noKey()));
        } catch (IOException e) {
            return Result.refused("no-key", Bundle.Club_noKey());
        }
    }
}
