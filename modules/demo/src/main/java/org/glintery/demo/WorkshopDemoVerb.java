package org.glintery.demo;

import java.nio.file.Path;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.atomic.AtomicLong;
import java.util.stream.Collectors;
import org.glintery.api.Result;
import org.glintery.api.activework.Sitting;
import org.glintery.api.finishes.Finish;
import org.glintery.api.ledger.Balance;
import org.glintery.api.stash.Kit;
import org.glintery.api.stash.Piece;
import org.glintery.api.stash.Standing;
import org.glintery.api.verb.Param;
import org.glintery.api.verb.Verb;
import org.glintery.api.verb.VerbCall;
import org.glintery.api.verb.VerbResult;
import org.glintery.api.workshop.Applied;
import org.glintery.api.workshop.LedgerQuery;
import org.glintery.api.workshop.View;
import org.glintery.api.workshop.Workshop;
import org.openide.util.NbBundle.Messages;
import org.openide.util.lookup.ServiceProvider;

/** {@code workshop demo}: makes a workshop and fills it with the demo. */
@ServiceProvider(service = Verb.class)
@Messages({
    "WorkshopDemoVerb.summary=Make a workshop and fill it with the demo: a club in a ferry town",
    "WorkshopDemoVerb.folder=a new or empty folder; else the one --workshop names",
    "WorkshopDemoVerb.seed=the same number gives the same demo; 1 when not said",
    "WorkshopDemoVerb.noSeed=--seed takes a whole number.",
    "# {0} - folder",
    "# {1} - kits in figures",
    "# {2} - pieces in figures",
    "# {3} - pieces by standing",
    "# {4} - sittings in figures",
    "# {5} - finishes in figures",
    "# {6} - movements in figures",
    "# {7} - pictures in figures",
    "WorkshopDemoVerb.made=Made the demo in {0}: {1} kits, {2} pieces ({3}), {4} sittings, {5} finishes, {6} movements of drills, {7} pictures.",
    "# {0} - how many",
    "# {1} - standing",
    "WorkshopDemoVerb.standing={0} {1}",
    "WorkshopDemoVerb.hopedFor=hoped for",
    "WorkshopDemoVerb.ordered=ordered",
    "WorkshopDemoVerb.shelved=shelved",
    "WorkshopDemoVerb.onTheBench=on the bench",
    "WorkshopDemoVerb.resting=resting",
    "WorkshopDemoVerb.finished=made",
    "WorkshopDemoVerb.letGo=let go"
})
public final class WorkshopDemoVerb implements Verb {

    /** What the demo holds. @param standings pieces by standing */
    public record Demo(
            String folder,
            int kits,
            int pieces,
            Map<String, Integer> standings,
            int sittings,
            int finishes,
            long movements,
            int pictures) {}

    @Override
    public String name() {
        return "workshop demo";
    }

    @Override
    public String summary() {
        return Bundle.WorkshopDemoVerb_summary();
    }

    @Override
    public String feature() {
        return "demo";
    }

    @Override
    public List<Param> params() {
        return List.of(
                Param.optionalPositional("folder", "DIR", Bundle.WorkshopDemoVerb_folder()),
                Param.option("seed", "NUMBER", Bundle.WorkshopDemoVerb_seed()));
    }

    @Override
    public Class<? extends Record> answers() {
        return Demo.class;
    }

    @Override
    public VerbResult run(VerbCall call) {
        String seed = call.value("seed").orElse("1");
        if (!seed.matches("-?\\d{1,18}")) {
            return VerbResult.wrongUsage(Bundle.WorkshopDemoVerb_noSeed());
        }
        Path folder = call.value("folder").map(call::path).orElseGet(call::workshopFolder);
        Result<Workshop> made = call.workshops().create(folder);
        if (made instanceof Result.Refused<Workshop> no) {
            return VerbResult.refused(no.refusal());
        }
        Result.Ok<Workshop> ok = (Result.Ok<Workshop>) made;
        ok.warnings().forEach(call::say);
        try (Workshop workshop = ok.value()) {
            Result<Applied> filled = new DemoFilling().fill(workshop, Long.parseLong(seed));
            if (filled instanceof Result.Refused<Applied> no) {
                return VerbResult.refused(no.refusal());
            }
            return said(workshop);
        }
    }

    private static VerbResult said(Workshop workshop) {
        View view = workshop.view();
        Map<Standing, Integer> standings = new EnumMap<>(Standing.class);
        view.all(Piece.TYPE).forEach(piece -> standings.merge(piece.value().standing(), 1, Integer::sum));
        Map<String, Integer> inWords = new LinkedHashMap<>();
        standings.forEach((standing, pieces) -> inWords.put(words(standing), pieces));
        AtomicLong movements = new AtomicLong();
        workshop.ledger(LedgerQuery.all(), entry -> movements.incrementAndGet());
        var demo = new Demo(
                workshop.folder().toString(),
                view.all(Kit.TYPE).size(),
                view.all(Piece.TYPE).size(),
                inWords,
                view.all(Sitting.TYPE).size(),
                view.all(Finish.TYPE).size(),
                movements.get(),
                view.blobs().size());
        return VerbResult.said(demo, text(demo));
    }

    private static String text(Demo demo) {
        String standings = demo.standings().entrySet().stream()
                .map(entry -> Bundle.WorkshopDemoVerb_standing(Balance.grouped(entry.getValue()), entry.getKey()))
                .collect(Collectors.joining(", "));
        return Bundle.WorkshopDemoVerb_made(
                demo.folder(),
                Balance.grouped(demo.kits()),
                Balance.grouped(demo.pieces()),
                standings,
                Balance.grouped(demo.sittings()),
                Balance.grouped(demo.finishes()),
                Balance.grouped(demo.movements()),
                Balance.grouped(demo.pictures()));
    }

    private static String words(Standing standing) {
        return switch (standing) {
            case HOPED_FOR -> Bundle.WorkshopDemoVerb_hopedFor();
            case ORDERED -> Bundle.WorkshopDemoVerb_ordered();
            case SHELVED -> Bundle.WorkshopDemoVerb_shelved();
            case ON_THE_BENCH -> Bundle.WorkshopDemoVerb_onTheBench();
            case RESTING -> Bundle.WorkshopDemoVerb_resting();
            case MADE -> Bundle.WorkshopDemoVerb_finished();
            case LET_GO -> Bundle.WorkshopDemoVerb_letGo();
        };
    }
}
