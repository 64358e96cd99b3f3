package org.glintery.records;

import org.glintery.api.Refusal;
import org.glintery.api.ledger.Balance;
import org.glintery.api.ledger.Drill;
import org.glintery.api.ledger.Spot;
import org.glintery.api.workshop.PictureFacts;
import org.openide.util.NbBundle.Messages;

/** The words of every refusal. Names are not known here: a spot is called by its kind. */
@Messages({
    "# {0} - spot",
    "# {1} - drill",
    "# {2} - what is there",
    "# {3} - count asked for",
    "not-enough=There are not enough in {0}: {2} of {1} there, {3} asked for. Nothing was changed.",
    "# {0} - spot",
    "# {1} - drill",
    "# {2} - what is there",
    "nothing-uncounted=Nothing uncounted of {1} lies in {0} (there: {2}). Say how many to move. Nothing was changed.",
    "id-reused=This movement's id was used before for something else. Nothing was changed; use a new id.",
    "change-repeated=This change was made before. It was not made a second time.",
    "out-of-date=This was changed in the meantime. Nothing was overwritten; look at it again and repeat your change.",
    "overflow=A count would become larger than can be kept. Nothing was changed; look for a typing error.",
    "same-spot=The drills are there already: the two places are the same. Nothing was changed.",
    "nothing-to-move=There is nothing to move: the count is 0. Nothing was changed.",
    "not-inside=Only a bag, a pocket or a canvas can be counted. Nothing was changed.",
    "amount-needed=A count needs a number. Nothing was changed.",
    "unknown-movement=The movement to take back is not in this workshop. Nothing was changed.",
    "already-reversed=This movement was taken back before. Nothing was changed.",
    "# {0} - drill",
    "# {1} - count available",
    "not-available=More of {0} would be set aside than is free: {1} too many. Nothing was changed.",
    "# {0} - drill",
    "# {1} - count short",
    "reserved=Too many of {0} are set aside for other work: {1} short. Nothing was changed; complete or let go of the piece they are set aside for.",
    "# {0} - kind of document",
    "document-too-large=This {0} holds more than 1 MiB of text. Nothing was changed; make it shorter or split it.",
    "blob-too-large=This picture is larger than 64 MiB. Nothing was changed; make it smaller.",
    "# {0} - such as 60 000 x 60 000",
    "picture-too-large=A picture says it is {0} pixels, which is too large to open. Nothing was changed; save it smaller.",
    "wrong-hash=This picture is not what its hash says. Nothing was changed.",
    "# {0} - kind of document",
    "document-newer=This {0} was written by a newer Glintery and can only be looked at. Nothing was changed; update Glintery to change it.",
    "words-bag=the bag",
    "words-pocket=the pocket",
    "words-canvas=the canvas",
    "# {0} - what is wrong",
    "malformed=This can''t be kept as it is: {0}. Nothing was changed.",
    "ledger-unreadable=What was booked in this workshop can't be read, so nothing more can be kept in it. Nothing was changed; restore a backup into a new folder.",
    "closed=This workshop was closed. Nothing was changed; open it again.",
    "nothing-to-undo=There is nothing to undo.",
    "nothing-to-redo=There is nothing to redo.",
    "# {0} - sentence",
    "# {1} - why",
    "later-work=\"{0}\" can''t be taken back any more, because later work stands on it. {1}",
    "later-document=What it wrote was changed since."
})
final class Refusals {
    private Refusals() {}

    static Refusal notEnough(Spot spot, Drill drill, Balance there, long asked) {
        return new Refusal(
                "not-enough", Bundle.not_enough(words(spot), drill.words(), there.words(), Balance.grouped(asked)));
    }

    static Refusal nothingUncounted(Spot spot, Drill drill, Balance there) {
        return new Refusal("not-enough", Bundle.nothing_uncounted(words(spot), drill.words(), there.words()));
    }

    static Refusal idReused() {
        return new Refusal("id-reused", Bundle.id_reused());
    }

    static Refusal changeRepeated() {
        return new Refusal("change-repeated", Bundle.change_repeated());
    }

    static Refusal outOfDate() {
        return new Refusal("out-of-date", Bundle.out_of_date());
    }

    static Refusal overflow() {
        return new Refusal("overflow", Bundle.overflow());
    }

    static Refusal sameSpot() {
        return new Refusal("same-spot", Bundle.same_spot());
    }

    static Refusal nothingToMove() {
        return new Refusal("nothing-to-move", Bundle.nothing_to_move());
    }

    static Refusal notInside() {
        return new Refusal("not-inside", Bundle.not_inside());
    }

    static Refusal amountNeeded() {
        return new Refusal("amount-needed", Bundle.amount_needed());
    }

    static Refusal unknownMovement() {
        return new Refusal("unknown-movement", Bundle.unknown_movement());
    }

    static Refusal alreadyReversed() {
        return new Refusal("already-reversed", Bundle.already_reversed());
    }

    static Refusal notAvailable(Drill drill, long tooMany) {
        return new Refusal("not-available", Bundle.not_available(drill.words(), Balance.grouped(tooMany)));
    }

    static Refusal reserved(Drill drill, long tooMany) {
        return new Refusal("reserved", Bundle.reserved(drill.words(), Balance.grouped(tooMany)));
    }

    static Refusal documentTooLarge(String type) {
        return new Refusal("too-large", Bundle.document_too_large(type));
    }

    static Refusal blobTooLarge() {
        return new Refusal("too-large", Bundle.blob_too_large());
    }

    static Refusal pictureTooLarge(PictureFacts picture) {
        return new Refusal("picture-too-large", Bundle.picture_too_large(picture.sizeWords()));
    }

    static Refusal wrongHash() {
        return new Refusal("malformed", Bundle.wrong_hash());
    }

    static Refusal newer(String type) {
        return new Refusal("newer", Bundle.document_newer(type));
    }

    static Refusal malformed(String what) {
        return new Refusal("malformed", Bundle.malformed(what));
    }

    static Refusal ledgerUnreadable() {
        return new Refusal("unreadable", Bundle.ledger_unreadable());
    }

    static Refusal closed() {
        return new Refusal("closed", Bundle.closed());
    }

    static Refusal nothingToUndo() {
        return new Refusal("nothing-to-undo", Bundle.nothing_to_undo());
    }

    static Refusal nothingToRedo() {
        return new Refusal("nothing-to-redo", Bundle.nothing_to_redo());
    }

    static Refusal laterWork(String sentence, String why) {
        return new Refusal("later-work", Bundle.later_work(sentence, why));
    }

    static Refusal laterDocument(String sentence) {
        return laterWork(sentence, Bundle.later_document());
    }

    private static String words(Spot spot) {
        if (spot instanceof Spot.InBag) {
            return Bundle.words_bag();
        }
        if (spot instanceof Spot.InPocket) {
            return Bundle.words_pocket();
        }
        return spot.isBoundary() ? spot.toString() : Bundle.words_canvas();
    }
}
