package org.glintery.stash.verbs;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.glintery.api.ledger.Balance;
import org.glintery.api.ledger.Spot;
import org.glintery.api.stash.Stash.KnownDrill;
import org.glintery.api.storage.SpotNames;
import org.glintery.api.verb.DrillAnswer;
import org.glintery.api.verb.Param;
import org.glintery.api.verb.TextTable;
import org.glintery.api.verb.Verb;
import org.glintery.api.verb.VerbCall;
import org.glintery.api.verb.VerbResult;
import org.glintery.api.workshop.View;
import org.glintery.stash.FoundPlaces;
import org.openide.util.NbBundle.Messages;
import org.openide.util.lookup.ServiceProvider;

/** {@code drills find}: which drills there are, and where they lie. */
@ServiceProvider(service = Verb.class)
public final class DrillsFindVerb implements Verb {

    /** The drills that fit. */
    public record Found(List<FoundDrill> drills) {}

    /**
     * A drill.
     *
     * @param available in the house, neither set aside nor kept for repairs; below zero where more is set aside than is left
     */
    public record FoundDrill(
            DrillAnswer drill,
            Optional<String> name,
            Optional<String> hex,
            Balance inTheHouse,
            Balance available,
            List<Place> places) {}

    /**
     * A bag, pocket or canvas that holds it.
     *
     * @param found how many of these were there though they were not booked, and were not looked at yet
     */
    public record Place(String spot, String words, Balance balance, long found) {}

    @Override
    public String name() {
        return "drills find";
    }

    @Override
    @Messages("DrillsFindVerb.summary=Find drills by card, code or name, and where they lie")
    public String summary() {
        return Bundle.DrillsFindVerb_summary();
    }

    @Override
    public String feature() {
        return "stash";
    }

    @Override
    @Messages({
        "DrillsFindVerb.text=part of a card, code or name; all drills without it",
        "DrillsFindVerb.found=only what was found though it was not booked"
    })
    public List<Param> params() {
        return List.of(
                Param.optionalPositional("text", "TEXT", Bundle.DrillsFindVerb_text()),
                Param.flag("found", Bundle.DrillsFindVerb_found()));
    }

    @Override
    public Class<? extends Record> answers() {
        return Found.class;
    }

    @Override
    @Messages({
        "DrillsFindVerb.drill=Drill",
        "DrillsFindVerb.name=Name",
        "DrillsFindVerb.inTheHouse=In the house",
        "DrillsFindVerb.available=Available",
        "DrillsFindVerb.where=Where"
    })
    public VerbResult run(VerbCall call) {
        View view = call.workshop().view();
        String text = call.value("text").orElse("");
        List<FoundDrill> found = StashOfCall.of(call).find(view, text).stream()
                .map(known -> found(view, known))
                .filter(one -> !call.flag("found") || one.places().stream().anyMatch(place -> place.found() > 0))
                .toList();
        if (found.isEmpty()) {
            return VerbResult.said(new Found(found), none(call.flag("found"), text));
        }
        TextTable table = new TextTable(
                Bundle.DrillsFindVerb_drill(),
                Bundle.DrillsFindVerb_name(),
                Bundle.DrillsFindVerb_inTheHouse(),
                Bundle.DrillsFindVerb_available(),
                Bundle.DrillsFindVerb_where());
        for (FoundDrill one : found) {
            String where = String.join(
                    "; ", one.places().stream().map(DrillsFindVerb::words).toList());
            table.row(
                    one.drill().card() + " " + one.drill().code(),
                    one.name().orElse(""),
                    one.inTheHouse().words(),
                    available(one.available()),
                    where);
        }
        return VerbResult.said(new Found(found), table.toString());
    }

    @Messages({
        "# {0} - how many",
        "DrillsFindVerb.short={0} short",
        "# {0} - how many",
        "DrillsFindVerb.shortOfCounted={0} short, but for some not counted yet"
    })
    private static String available(Balance available) {
        if (available.count() >= 0) {
            return available.words();
        }
        String tooFew = new Balance(-available.count(), available.variance(), 0).words();
        return available.uncounted() == 0
                ? Bundle.DrillsFindVerb_short(tooFew)
                : Bundle.DrillsFindVerb_shortOfCounted(tooFew);
    }

    @Messages({
        "DrillsFindVerb.none=No drills yet.",
        "DrillsFindVerb.noneFound=Nothing was found that was not booked.",
        "# {0} - what was asked for",
        "DrillsFindVerb.noneFits=No drill fits ''{0}''."
    })
    private static String none(boolean foundOnly, String text) {
        if (!text.isBlank()) {
            return Bundle.DrillsFindVerb_noneFits(text);
        }
        return foundOnly ? Bundle.DrillsFindVerb_noneFound() : Bundle.DrillsFindVerb_none();
    }

    @Messages({
        "# {0} - where",
        "# {1} - how many lie there",
        "DrillsFindVerb.there={0}: {1}",
        "# {0} - where",
        "# {1} - how many lie there",
        "# {2} - of these",
        "DrillsFindVerb.withFound={0}: {1} ({2} found)"
    })
    private static String words(Place place) {
        String there = place.balance().words();
        return place.found() == 0
                ? Bundle.DrillsFindVerb_there(place.words(), there)
                : Bundle.DrillsFindVerb_withFound(place.words(), there, Balance.grouped(place.found()));
    }

    private static FoundDrill found(View view, KnownDrill known) {
        List<Place> places = new ArrayList<>();
        view.whereabouts(known.drill()).entrySet().stream()
                .filter(entry -> !entry.getKey().isBoundary())
                .sorted(Comparator.comparingLong(
                                (Map.Entry<Spot, Balance> e) -> -e.getValue().count())
                        .thenComparing(e -> e.getKey().toString()))
                .forEach(entry -> places.add(new Place(
                        SpotNames.written(view, entry.getKey()),
                        SpotNames.words(view, entry.getKey()),
                        entry.getValue(),
                        FoundPlaces.at(view, entry.getKey(), known.drill()))));
        return new FoundDrill(
                DrillAnswer.of(known.drill()),
                known.entry().name(),
                known.entry().hex(),
                known.inTheHouse(),
                known.available(),
                places);
    }
}
