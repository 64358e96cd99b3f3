package org.glintery.stash.verbs;

import java.util.List;
import java.util.UUID;
import org.glintery.api.stash.Kit;
import org.glintery.api.stash.Piece;
import org.glintery.api.verb.Param;
import org.glintery.api.verb.TextTable;
import org.glintery.api.verb.Verb;
import org.glintery.api.verb.VerbCall;
import org.glintery.api.verb.VerbResult;
import org.glintery.api.verb.VerbSteps;
import org.glintery.api.workshop.Stored;
import org.glintery.api.workshop.View;
import org.openide.util.lookup.ServiceProvider;

/** {@code kit show}: a kit and its pieces. */
@ServiceProvider(service = Verb.class)
public final class KitShowVerb implements Verb {

    /** A kit with all that is in it. */
    public record Shown(UUID id, Kit kit, List<PieceLine> pieces) {}

    @Override
    public String name() {
        return "kit show";
    }

    @Override
    public String summary() {
        return "Show a kit and its pieces";
    }

    @Override
    public String feature() {
        return "stash";
    }

    @Override
    public List<Param> params() {
        return List.of(Param.positional("kit", "KIT", "its title or id"));
    }

    @Override
    public Class<? extends Record> answers() {
        return Shown.class;
    }

    @Override
    public VerbResult run(VerbCall call) {
        return VerbSteps.named(
                call,
                Kit.TYPE,
                Kit::title,
                call.need("kit"),
                kit -> show(call.workshop().view(), kit));
    }

    private static VerbResult show(View view, Stored<Kit> kit) {
        List<PieceLine> pieces = view.all(Piece.TYPE).stream()
                .filter(piece -> piece.value().kit().filter(kit.id()::equals).isPresent())
                .map(piece -> PieceLine.of(view, piece))
                .toList();
        TextTable table = new TextTable("Piece", "Standing", "Lines", "Drills", "Id");
        pieces.forEach(piece -> table.row(
                piece.title(),
                WordOption.words(piece.standing()),
                piece.lines(),
                piece.needed().map(String::valueOf).orElse("not known"),
                piece.id()));
        Kit value = kit.value();
        String head = value.title()
                + value.source().map(source -> " from " + source).orElse("")
                + value.arrivedOn().map(on -> ", arrived " + on.words()).orElse("")
                + (value.notes().isBlank() ? "" : "\n" + value.notes());
        return VerbResult.said(
                new Shown(kit.id(), value, pieces),
                head + "\n" + (table.isEmpty() ? "No piece in it." : table.toString()));
    }
}
