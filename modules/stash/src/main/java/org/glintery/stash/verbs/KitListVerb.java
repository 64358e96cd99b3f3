package org.glintery.stash.verbs;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.glintery.api.stash.Kit;
import org.glintery.api.stash.Piece;
import org.glintery.api.verb.Param;
import org.glintery.api.verb.TextTable;
import org.glintery.api.verb.Verb;
import org.glintery.api.verb.VerbCall;
import org.glintery.api.verb.VerbResult;
import org.glintery.api.workshop.View;
import org.openide.util.NbBundle.Messages;
import org.openide.util.lookup.ServiceProvider;

/** {@code kit list}: all kits and what is in them. */
@ServiceProvider(service = Verb.class)
public final class KitListVerb implements Verb {

    /** The kits, in the order they came. */
    public record Kits(List<KitLine> kits) {}

    /** A kit. @param pieces their titles */
    public record KitLine(UUID id, String title, Optional<String> source, List<String> pieces) {}

    @Override
    public String name() {
        return "kit list";
    }

    @Override
    @Messages("KitListVerb.summary=List the kits")
    public String summary() {
        return Bundle.KitListVerb_summary();
    }

    @Override
    public String feature() {
        return "stash";
    }

    @Override
    public List<Param> params() {
        return List.of();
    }

    @Override
    public Class<? extends Record> answers() {
        return Kits.class;
    }

    @Override
    @Messages({
        "KitListVerb.title=Title",
        "KitListVerb.from=From",
        "KitListVerb.pieces=Pieces",
        "KitListVerb.id=Id",
        "KitListVerb.none=No kits yet."
    })
    public VerbResult run(VerbCall call) {
        View view = call.workshop().view();
        Map<UUID, List<String>> titles = new HashMap<>();
        view.all(Piece.TYPE)
                .forEach(piece -> piece.value()
                        .kit()
                        .ifPresent(kit -> titles.computeIfAbsent(kit, k -> new ArrayList<>())
                                .add(piece.value().title())));
        List<KitLine> kits = view.all(Kit.TYPE).stream()
                .map(kit -> new KitLine(
                        kit.id(), kit.value().title(), kit.value().source(), titles.getOrDefault(kit.id(), List.of())))
                .toList();
        TextTable table = new TextTable(
                Bundle.KitListVerb_title(),
                Bundle.KitListVerb_from(),
                Bundle.KitListVerb_pieces(),
                Bundle.KitListVerb_id());
        kits.forEach(kit -> table.row(kit.title(), kit.source().orElse(""), String.join("; ", kit.pieces()), kit.id()));
        return VerbResult.said(new Kits(kits), table.isEmpty() ? Bundle.KitListVerb_none() : table.toString());
    }
}
