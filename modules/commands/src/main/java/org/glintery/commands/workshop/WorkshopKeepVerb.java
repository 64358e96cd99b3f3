package org.glintery.commands.workshop;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.glintery.api.Result;
import org.glintery.api.stash.Stash;
import org.glintery.api.verb.Param;
import org.glintery.api.verb.Verb;
import org.glintery.api.verb.VerbCall;
import org.glintery.api.verb.VerbResult;
import org.glintery.api.workshop.Applied;
import org.glintery.api.workshop.ChangeSet;
import org.glintery.api.workshop.Settings;
import org.glintery.api.workshop.Settings.Depth;
import org.glintery.api.workshop.View;
import org.openide.util.NbBundle.Messages;
import org.openide.util.lookup.ServiceProvider;

/** {@code workshop keep}: changes how much is kept. */
@ServiceProvider(service = Verb.class)
public final class WorkshopKeepVerb extends WorkshopVerb {
    private static final String WHAT = "what";
    private static final String BOOK = "book";
    private static final String DRILLS = "drills";

    /** How much is kept now. */
    public record Kept(Depth depth) {}

    public WorkshopKeepVerb() {
        super("keep", Kept.class);
    }

    @Override
    @Messages("WorkshopKeepVerb.summary=Keep the drills as well from now on, or only the book")
    public String summary() {
        return Bundle.WorkshopKeepVerb_summary();
    }

    @Override
    @Messages(
            "WorkshopKeepVerb.what=drills, which books what came with the pieces in the house, or book, which throws nothing away")
    public List<Param> params() {
        return List.of(Param.positional(WHAT, "WHAT", Bundle.WorkshopKeepVerb_what()));
    }

    @Override
    @Messages({
        "# {0} - what was written",
        "WorkshopKeepVerb.neither=''{0}'' is neither drills nor book.",
        "WorkshopKeepVerb.drills=The drills are kept as well.",
        "WorkshopKeepVerb.book=Only the book is kept. What was kept before is still there."
    })
    public VerbResult run(VerbCall call) {
        String what = call.value(WHAT).orElseThrow().strip().toLowerCase(Locale.ROOT);
        if (!List.of(BOOK, DRILLS).contains(what)) {
            return VerbResult.wrongUsage(Bundle.WorkshopKeepVerb_neither(what));
        }
        boolean drills = what.equals(DRILLS);
        Result<ChangeSet> change = drills ? drills(call) : book(call.workshop().view());
        Result<Applied> applied = change.then(call.workshop()::apply);
        if (applied instanceof Result.Refused<Applied> no) {
            return VerbResult.refused(no.refusal());
        }
        ((Result.Ok<Applied>) applied).warnings().forEach(call::say);
        return VerbResult.said(
                new Kept(drills ? Depth.DRILLS_AS_WELL : Depth.ONLY_THE_BOOK),
                drills ? Bundle.WorkshopKeepVerb_drills() : Bundle.WorkshopKeepVerb_book());
    }

    @Messages("WorkshopKeepVerb.noStash=Drills can't be kept because the stash is switched off. Nothing was changed.")
    private static Result<ChangeSet> drills(VerbCall call) {
        Optional<Stash> stash = call.workshop().find(Stash.class);
        return stash.isEmpty()
                ? Result.refused("switched-off", Bundle.WorkshopKeepVerb_noStash())
                : stash.get().keepDrills(call.workshop().view());
    }

    @Messages("WorkshopKeepVerb.keepBook=Keep only the book")
    private static Result<ChangeSet> book(View view) {
        ChangeSet.Builder change = ChangeSet.named(Bundle.WorkshopKeepVerb_keepBook());
        if (Settings.keepsDrills(view)) {
            Settings.choose(change, view, Depth.ONLY_THE_BOOK);
        }
        return Result.ok(change.build());
    }
}
