package org.glintery.club.verbs;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.SecureRandom;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.glintery.api.verb.Param;
import org.glintery.api.verb.Verb;
import org.glintery.api.verb.VerbCall;
import org.glintery.api.verb.VerbResult;
import org.glintery.club.RoomCopy;
import org.glintery.club.signing.MemberKey;
import org.glintery.club.signing.RecoverySheet;
import org.openide.util.NbBundle.Messages;
import org.openide.util.lookup.ServiceProvider;

/** {@code club join}: asks to be a member of a club, or comes back into it with a recovery sheet. */
@ServiceProvider(service = Verb.class)
public final class ClubJoinVerb implements Verb {
    private static final long LONGEST_SHEET_BYTES = 100_000;

    @Override
    public String name() {
        return "club join";
    }

    @Override
    @Messages("ClubJoinVerb.summary=Ask to join a club, or come back with a recovery sheet")
    public String summary() {
        return Bundle.ClubJoinVerb_summary();
    }

    @Override
    public String feature() {
        return "club";
    }

    @Override
    @Messages({
        "ClubJoinVerb.code=the club's code, which its organiser tells you",
        "ClubJoinVerb.recover=your recovery sheet, typed off into a file"
    })
    public List<Param> params() {
        return List.of(
                Param.positional("code", "CODE", Bundle.ClubJoinVerb_code()),
                Param.required("as", "NAME", Bundle.ClubNewVerb_as()),
                Param.required("room", "FOLDER", Bundle.ClubNewVerb_room()),
                Param.option("sheet", "FILE.txt", Bundle.ClubNewVerb_sheet()),
                Param.option("recover", "FILE.txt", Bundle.ClubJoinVerb_recover()));
    }

    @Override
    public Class<? extends Record> answers() {
        return Entered.class;
    }

    @Override
    @Messages({
        "ClubJoinVerb.noCode=That is no code of a club: it has 32 figures and letters from a to f.",
        "# {0} - file",
        "ClubJoinVerb.noSheet={0} holds no key of a recovery sheet, or it was mistyped. Compare it with the paper group by group. "
                + "Nothing was changed."
    })
    public VerbResult run(VerbCall call) {
        String code = call.need("code").replaceAll("[\\s-]", "").toLowerCase(Locale.ROOT);
        if (!code.matches("[0-9a-f]{32}")) {
            return VerbResult.wrongUsage(Bundle.ClubJoinVerb_noCode());
        }
        Optional<String> recover = call.value("recover");
        Optional<MemberKey> key =
                recover.isEmpty() ? Optional.of(MemberKey.made(new SecureRandom())) : sheet(call.path(recover.get()));
        return key.isEmpty()
                ? VerbResult.refused("no-sheet", Bundle.ClubJoinVerb_noSheet(recover.orElseThrow()))
                : new Entering(call, key.get()).enter(RoomCopy.empty(code), code);
    }

    private static Optional<MemberKey> sheet(Path file) {
        try {
            return Files.size(file) > LONGEST_SHEET_BYTES
                    ? Optional.empty()
                    : RecoverySheet.read(Files.readString(file, StandardCharsets.UTF_8));
        } catch (IOException e) {
            return Optional.empty();
        }
    }
}
