package org.glintery.demo;

import java.nio.file.Path;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.atomic.AtomicLong;
import java.util.stream.Collectors;
import org.glintery.api.Result;
import org.glintery.api.activework.Sitting;
import org.glintery.api.finishes.Finish;
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
import org.openide.util.lookup.ServiceProvider;

/** {@code workshop demo}: makes a workshop and fills it with the demo. */
@ServiceProvider(service = Verb.class)
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
        return "Make a workshop and fill it with the demo: a club in a ferry town";
    }

    @Override
    public String feature() {
        return "demo";
    }

    @Override
    public List<Param> params() {
        return List.of(
                Param.optionalPositional("folder", "DIR", "a new or empty folder; else the one --workshop names"),
                Param.option("seed", "NUMBER", "the same number gives the same demo; 1 when not said"));
    }

    @Override
    public Class<? extends Record> answers() {
        return Demo.class;
    }

    @Override
    public VerbResult run(VerbCall call) {
        String seed = call.value("seed").orElse("1");
        if (!seed.matches("-?\\d{1,18}")) {
            return VerbResult.wrongUsage("--seed takes a whole number.");
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
                .map(entry -> entry.getValue() + " " + entry.getKey())
                .collect(Collectors.joining(", "));
        return "Made the demo in " + demo.folder() + ": " + demo.kits() + " kits, " + demo.pieces() + " pieces ("
                + standings + "), " + demo.sittings() + " sittings, " + demo.finishes() + " finishes, "
                + demo.movements() + " movements of drills, " + demo.pictures() + " pictures.";
    }

    private static String words(Standing standing) {
        return standing.name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }
}
