package org.glintery.activework.verbs;

import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.glintery.activework.BookedSupply;
import org.glintery.api.Refusal;
import org.glintery.api.activework.Laid;
import org.glintery.api.activework.Progress;
import org.glintery.api.activework.Sitting;
import org.glintery.api.stash.Piece;
import org.glintery.api.time.About;
import org.glintery.api.verb.Param;
import org.glintery.api.verb.Verb;
import org.glintery.api.verb.VerbCall;
import org.glintery.api.verb.VerbResult;
import org.glintery.api.verb.VerbSteps;
import org.glintery.api.workshop.Stored;
import org.openide.util.NbBundle.Messages;
import org.openide.util.lookup.ServiceProvider;

/** {@code bench sit}: records a sitting. */
@ServiceProvider(service = Verb.class)
public final class BenchSitVerb implements Verb {

    private static final int MINUTES_A_DAY = 1_440;

    /** A sitting that was recorded, and how far the piece is now. */
    public record Sat(
            UUID sitting,
            UUID piece,
            String title,
            About day,
            Optional<Integer> minutes,
            Laid laid,
            Progress progress) {}

    @Override
    public String name() {
        return "bench sit";
    }

    @Override
    @Messages("BenchSitVerb.summary=Record a sitting: drills, percent, sections, drills by symbol, or minutes alone")
    public String summary() {
        return Bundle.BenchSitVerb_summary();
    }

    @Override
    public String feature() {
        return "activework";
    }

    @Override
    @Messages({
        "BenchSitVerb.piece=its title or id",
        "BenchSitVerb.drills=drills that were laid",
        "BenchSitVerb.percent=percent of the whole piece that was laid",
        "BenchSitVerb.sections=sections that were laid",
        "BenchSitVerb.symbol=drills of one symbol, booked to the canvas; once for each",
        "BenchSitVerb.minutes=how long, pauses left out",
        "BenchSitVerb.where=the place, such as 'kitchen table'",
        "BenchSitVerb.note=anything else"
    })
    public List<Param> params() {
        return List.of(
                Param.positional("piece", "PIECE", Bundle.BenchSitVerb_piece()),
                Param.option("drills", "N", Bundle.BenchSitVerb_drills()),
                Param.option("percent", "P", Bundle.BenchSitVerb_percent()),
                Param.option("sections", "N", Bundle.BenchSitVerb_sections()),
                Param.option("symbol", "SYMBOL=N", Bundle.BenchSitVerb_symbol()),
                Param.option("minutes", "N", Bundle.BenchSitVerb_minutes()),
                SaidOptions.when(),
                Param.option("where", "TEXT", Bundle.BenchSitVerb_where()),
                Param.option("note", "TEXT", Bundle.BenchSitVerb_note()));
    }

    @Override
    public Class<? extends Record> answers() {
        return Sat.class;
    }

    @Override
    public VerbResult run(VerbCall call) {
        return VerbSteps.named(call, Piece.TYPE, Piece::title, call.need("piece"), piece -> sit(call, piece));
    }

    private static VerbResult sit(VerbCall call, Stored<Piece> piece) {
        SaidOptions said = new SaidOptions(call);
        Sitting sitting = new Sitting(
                piece.id(),
                said.on(),
                Optional.empty(),
                Optional.empty(),
                said.number("minutes", 0, MINUTES_A_DAY),
                0,
                said.laid(),
                call.value("where").map(String::strip).filter(where -> !where.isEmpty()),
                call.value("note").orElse("").strip());
        if (said.misunderstood().isPresent()) {
            return VerbResult.wrongUsage(said.misunderstood().get());
        }
        var view = call.workshop().view();
        Optional<Refusal> shortage =
                BookedSupply.shortage(view, piece.id(), sitting.laid().bySymbol());
        if (shortage.isPresent()) {
            return VerbResult.refused(shortage.get());
        }
        UUID id = UUID.randomUUID();
        return VerbSteps.apply(call, BenchOfCall.of(call).sit(view, id, sitting), () -> answer(call, id, sitting));
    }

    @Messages({"# {0} - title", "# {1} - how far it is, a sentence", "BenchSitVerb.done=Sat at {0}. {1}"})
    private static VerbResult answer(VerbCall call, UUID id, Sitting sitting) {
        var view = call.workshop().view();
        String title =
                view.find(Piece.TYPE, sitting.piece()).orElseThrow().value().title();
        Progress progress = BenchOfCall.of(call).progress(view, sitting.piece());
        Sat sat = new Sat(id, sitting.piece(), title, sitting.day(), sitting.minutes(), sitting.laid(), progress);
        return VerbResult.said(sat, Bundle.BenchSitVerb_done(title, ProgressWords.of(progress)));
    }
}
