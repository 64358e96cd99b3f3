package org.glintery.stash.verbs;

import java.time.Instant;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.glintery.api.Result;
import org.glintery.api.ledger.LedgerAction;
import org.glintery.api.ledger.LedgerEntry;
import org.glintery.api.ledger.Spot;
import org.glintery.api.storage.SpotNames;
import org.glintery.api.time.About;
import org.glintery.api.verb.DrillAnswer;
import org.glintery.api.verb.Param;
import org.glintery.api.verb.Verb;
import org.glintery.api.verb.VerbCall;
import org.glintery.api.verb.VerbResult;
import org.glintery.api.workshop.LedgerQuery;
import org.openide.util.NbBundle.Messages;
import org.openide.util.lookup.ServiceProvider;

/** {@code drills ledger}: every movement in recorded order, one a line, so that any number can be read. */
@ServiceProvider(service = Verb.class)
public final class DrillsLedgerVerb implements Verb {

    static final String MOVEMENT = "movement";
    static final String STOCKTAKE = "stocktake";
    static final String REVERSAL = "reversal";

    /** Every movement, in the order it was recorded; printed as it is read, since there may be millions. */
    public record Ledger(List<Booked> movements) {}

    /**
     * One booked action.
     *
     * @param kind movement, stocktake or reversal
     * @param count whole drills that went from one spot to the other
     * @param uncounted whether an amount of unknown size went
     * @param reverses the action that a reversal takes back
     */
    public record Booked(
            long sequence,
            UUID id,
            String kind,
            DrillAnswer drill,
            String from,
            String to,
            long count,
            boolean uncounted,
            Optional<String> lot,
            Optional<UUID> reverses,
            String reason,
            Optional<About> happenedOn,
            Instant recordedAt) {}

    @Override
    public String name() {
        return "drills ledger";
    }

    @Override
    @Messages("DrillsLedgerVerb.summary=Print every movement with its id, one a line, in the order it was recorded")
    public String summary() {
        return Bundle.DrillsLedgerVerb_summary();
    }

    @Override
    public String feature() {
        return "stash";
    }

    @Override
    @Messages({
        "DrillsLedgerVerb.first=begin with this number",
        "DrillsLedgerVerb.most=at most so many",
        "DrillsLedgerVerb.spot=only what went in or out there"
    })
    public List<Param> params() {
        return List.of(
                Param.option("from-sequence", "N", Bundle.DrillsLedgerVerb_first()),
                Param.option("most", "N", Bundle.DrillsLedgerVerb_most()),
                Param.option("spot", "SPOT", Bundle.DrillsLedgerVerb_spot()));
    }

    @Override
    public Class<? extends Record> answers() {
        return Ledger.class;
    }

    @Override
    public VerbResult run(VerbCall call) {
        return VerbEnd.of(WordOption.whole(call, "from-sequence", 1, Long.MAX_VALUE)
                .then(first -> WordOption.whole(call, "most", 1, Integer.MAX_VALUE)
                        .then(most -> spot(call)
                                .then(spot -> Result.ok(print(
                                        call,
                                        new LedgerQuery(
                                                first.orElse(1L),
                                                most.map(Long::intValue).orElse(Integer.MAX_VALUE),
                                                Optional.empty(),
                                                spot)))))));
    }

    @Messages({"# {0} - what was written", "DrillsLedgerVerb.noSpot=There is no ''{0}'' here."})
    private static Result<Optional<Spot>> spot(VerbCall call) {
        return call.value("spot")
                .map(written -> SpotNames.resolve(call.workshop().view(), written)
                        .then(resolved -> resolved.toMake().isEmpty()
                                ? Result.ok(Optional.of(resolved.spot()))
                                : Result.refused("unknown-name", Bundle.DrillsLedgerVerb_noSpot(written))))
                .orElse(Result.ok(Optional.empty()));
    }

    private static VerbResult print(VerbCall call, LedgerQuery query) {
        var view = call.workshop().view();
        Map<Spot, String> names = new HashMap<>();
        LedgerWords words = new LedgerWords();
        call.list(
                "movements",
                each -> call.workshop().ledger(query, entry -> {
                    String from = names.computeIfAbsent(entry.from(), spot -> SpotNames.written(view, spot));
                    String to = names.computeIfAbsent(entry.to(), spot -> SpotNames.written(view, spot));
                    Booked booked = booked(entry, from, to);
                    each.accept(booked, words.of(booked, entry.drill()));
                }));
        return new VerbResult.Streamed(false);
    }

    private static Booked booked(LedgerEntry entry, String from, String to) {
        LedgerAction action = entry.action();
        boolean uncounted =
                action instanceof LedgerAction.Movement m && !m.amount().known();
        Optional<String> lot = action instanceof LedgerAction.Movement m ? m.lot() : Optional.empty();
        Optional<UUID> reverses =
                action instanceof LedgerAction.Reversal r ? Optional.of(r.reverses()) : Optional.empty();
        String kind = action instanceof LedgerAction.Movement
                ? MOVEMENT
                : action instanceof LedgerAction.Stocktake ? STOCKTAKE : REVERSAL;
        return new Booked(
                entry.sequence(),
                action.id(),
                kind,
                DrillAnswer.of(entry.drill()),
                from,
                to,
                entry.count(),
                uncounted,
                lot,
                reverses,
                action.reason(),
                action.happenedOn(),
                entry.recordedAt());
    }
}
