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
     * @param available in the house and not set aside
     */
    public record FoundDrill(
            DrillAnswer drill,
            Optional<String> name,
            Optional<String> hex,
            long inTheHouse,
            long available,
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
    public String summary() {
        return "Find drills by card, code or name, and where they lie";
    }

    @Override
    public String feature() {
        return "stash";
    }

    @Override
    @Messages("DrillsFindVerb.found=only what was found though it was not booked")
    public List<Param> params() {
        return List.of(
                Param.optionalPositional("text", "TEXT", "part of a card, code or name; all drills without it"),
                Param.flag("found", Bundle.DrillsFindVerb_found()));
    }

    @Override
    public Class<? extends Record> answers() {
        return Found.class;
    }

    @Override
    @Messages({"# {0} - where and how many lie there", "# {1} - of these", "DrillsFindVerb.place={0} ({1} found)"})
    public VerbResult run(VerbCall call) {
        View view = call.workshop().view();
        String text = call.value("text").orElse("");
        List<FoundDrill> found = StashOfCall.of(call).find(view, text).stream()
                .map(known -> found(view, known))
                .filter(one -> !call.flag("found") || one.places().stream().anyMatch(place -> place.found() > 0))
                .toList();
        if (found.isEmpty()) {
            return VerbResult.said(
                    new Found(found), text.isBlank() ? "No drills yet." : "No drill fits '" + text + "'.");
        }
        TextTable table = new TextTable("Drill", "Name", "In the house", "Available", "Where");
        for (FoundDrill one : found) {
            String where = String.join(
                    "; ", one.places().stream().map(DrillsFindVerb::words).toList());
            table.row(
                    one.drill().card() + " " + one.drill().code(),
                    one.name().orElse(""),
                    one.inTheHouse(),
                    one.available(),
                    where);
        }
        return VerbResult.said(new Found(found), table.toString());
    }

    private static String words(Place place) {
        String there = place.words() + ": " + place.balance().words();
        return place.found() == 0
                ? there
                : Bundle.DrillsFindVerb_place(there, new Balance(place.found(), 0, 0).words());
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
