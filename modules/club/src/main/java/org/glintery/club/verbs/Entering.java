package org.glintery.club.verbs;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.glintery.api.Json;
import org.glintery.api.PlainText;
import org.glintery.api.Result;
import org.glintery.api.verb.VerbCall;
import org.glintery.api.verb.VerbResult;
import org.glintery.api.verb.VerbSteps;
import org.glintery.api.workshop.ChangeSet;
import org.glintery.api.workshop.View;
import org.glintery.club.Club;
import org.glintery.club.Member;
import org.glintery.club.Membership;
import org.glintery.club.RoomCopy;
import org.glintery.club.signing.KeyFolder;
import org.glintery.club.signing.MemberKey;
import org.glintery.club.signing.RecoverySheet;
import org.openide.util.NbBundle.Messages;

/** What starting and joining a club have in common: a key, a sheet, the room's folder and the own card. */
final class Entering {
    private final VerbCall call;
    private final Club club;
    private final View view;
    private final MemberKey key;

    Entering(VerbCall call, MemberKey key) {
        this.call = call;
        this.key = key;
        club = call.workshop().find(Club.class).orElseThrow();
        view = call.workshop().view();
    }

    /** A name as a club shows it; empty when it is none. */
    static Optional<String> name(String written) {
        return Optional.of(PlainText.line(written).strip())
                .filter(name -> !name.isBlank() && name.length() <= Member.LONGEST_NAME);
    }

    static Json.Obj named(String name) {
        return Json.EMPTY.with("name", new Json.Text(name));
    }

    /** @param copy with what is written besides the card */
    @Messages({
        "Entering.already=This workshop is in a club already. Nothing was changed.",
        "# {0} - folder",
        "Entering.noFolder=There is no folder {0}. Make it first, on the drive or stick that the club shares.",
        "Entering.noName=A name has at least one letter and at most 80.",
        "Entering.change=Enter a club"
    })
    VerbResult enter(RoomCopy copy, String clubName) {
        Path room = call.path(call.need("room")).toAbsolutePath().normalize();
        Optional<String> as = name(call.need("as"));
        if (as.isEmpty()) {
            return VerbResult.wrongUsage(Bundle.Entering_noName());
        }
        if (club.membership(view).isPresent()) {
            return VerbResult.refused("in-a-club", Bundle.Entering_already());
        }
        if (!Files.isDirectory(room)) {
            return VerbResult.refused("no-folder", Bundle.Entering_noFolder(room));
        }
        Membership membership = new Membership(copy.club(), key.publicKey().memberId(), room.toString());
        RoomCopy whole = copy.with(key, RoomCopy.CARD, RoomCopy.CARD, named(as.get()));
        Result<ChangeSet> change = kept(as.get(), clubName, copy.club())
                .then(done -> club.kept(view, whole, Bundle.Entering_change()))
                .then(documents -> Result.ok(ChangeSet.named(Bundle.Entering_change())
                        .create(Membership.TYPE, Membership.ID, membership)
                        .addAll(documents.operations())
                        .build()));
        return VerbSteps.apply(call, change, () -> said(membership, as.get()));
    }

    /** Keeps the key, and writes its sheet when one is asked for. */
    @Messages({
        "Entering.keyNotKept=Your key could not be kept on this computer, so nothing was changed. Is there room, and may you "
                + "write in your own folder?",
        "# {0} - file",
        "Entering.sheet=The recovery sheet {0} could not be written, so nothing was changed. Is there a file of this name already?"
    })
    private Result<String> kept(String as, String clubName, String code) {
        try {
            KeyFolder.ofTheUser().keep(key);
        } catch (IOException e) {
            return Result.refused("key-not-kept", Bundle.Entering_keyNotKept());
        }
        Optional<String> sheet = call.value("sheet");
        try {
            if (sheet.isPresent()) {
                KeyFolder.write(call.path(sheet.get()), RecoverySheet.text(as, clubName, code, key));
            }
            return Result.ok(code);
        } catch (IOException e) {
            return Result.refused("sheet-not-written", Bundle.Entering_sheet(sheet.orElseThrow()));
        }
    }

    @Messages({
        "# {0} - name",
        "# {1} - club code",
        "Entering.done=You are {0}. The club''s code is {1}\nThe next ''room sync'' takes it to the shared folder.",
        "Entering.noSheet=There is no recovery sheet yet: without it, nobody can bring you back when this computer is lost. "
                + "Next time give --sheet."
    })
    private VerbResult said(Membership membership, String as) {
        if (call.value("sheet").isEmpty() && call.value("recover").isEmpty()) {
            call.say(Bundle.Entering_noSheet());
        }
        return VerbResult.said(
                new Entered(membership.club(), membership.member(), as, membership.isOrganiser()),
                Bundle.Entering_done(as, membership.club()));
    }
}
