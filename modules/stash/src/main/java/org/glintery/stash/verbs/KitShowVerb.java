package org.glintery.stash.verbs;

import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.glintery.api.ledger.Balance;
import org.glintery.api.stash.Kit;
import org.glintery.api.stash.Piece;
import org.glintery.api.time.About;
import org.glintery.api.verb.Param;
import org.glintery.api.verb.TextTable;
import org.glintery.api.verb.Verb;
import org.glintery.api.verb.VerbCall;
import org.glintery.api.verb.VerbResult;
import org.glintery.api.verb.VerbSteps;
import org.glintery.api.workshop.Stored;
import org.glintery.api.workshop.View;
import org.openide.util.NbBundle.Messages;
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
    @Messages("KitShowVerb.summary=Show a kit and its pieces")
    public String summary() {
        return Bundle.KitShowVerb_summary();
    }

    @Override
    public String feature() {
        return "stash";
    }

    @Override
    @Messages("KitShowVerb.kit=its title or id")
    public List<Param> params() {
        return List.of(Param.positional("kit", "KIT", Bundle.KitShowVerb_kit()));
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

    @Messages({
        "KitShowVerb.piece=Piece",
        "KitShowVerb.standing=Standing",
        "KitShowVerb.lines=Lines",
        "KitShowVerb.drills=Drills",
        "KitShowVerb.id=Id",
        "KitShowVerb.notKnown=not known",
        "KitShowVerb.noPiece=No piece in it."
    })
    private static VerbResult show(View view, Stored<Kit> kit) {
        List<PieceLine> pieces = view.all(Piece.TYPE).stream()
                .filter(piece -> piece.value().kit().filter(kit.id()::equals).isPresent())
                .map(piece -> PieceLine.of(view, piece))
                .toList();
        TextTable table = new TextTable(
                Bundle.KitShowVerb_piece(),
                Bundle.KitShowVerb_standing(),
                Bundle.KitShowVerb_lines(),
                Bundle.KitShowVerb_drills(),
                Bundle.KitShowVerb_id());
        pieces.forEach(piece -> table.row(
                piece.title(),
                StandingWords.of(piece.standing()),
                Balance.grouped(piece.lines()),
                piece.needed().map(Balance::grouped).orElse(Bundle.KitShowVerb_notKnown()),
                piece.id()));
        Kit value = kit.value();
        String notes = value.notes().isBlank() ? "" : "\n" + value.notes();
        return VerbResult.said(
                new Shown(kit.id(), value, pieces),
                head(value) + notes + "\n" + (table.isEmpty() ? Bundle.KitShowVerb_noPiece() : table.toString()));
    }

    @Messages({
        "# {0} - title",
        "# {1} - shop",
        "KitShowVerb.from={0} from {1}",
        "# {0} - title",
        "# {1} - when",
        "KitShowVerb.arrived={0}, arrived {1}",
        "# {0} - title",
        "# {1} - shop",
        "# {2} - when",
        "KitShowVerb.fromArrived={0} from {1}, arrived {2}"
    })
    private static String head(Kit kit) {
        Optional<String> arrived = kit.arrivedOn().map(About::words);
        return kit.source()
                .map(source -> arrived.map(on -> Bundle.KitShowVerb_fromArrived(kit.title(), source, on))
                        .orElseGet(() -> Bundle.KitShowVerb_from(kit.title(), source)))
                .or(() -> arrived.map(on -> Bundle.KitShowVerb_arrived(kit.title(), on)))
                .orElse(kit.title());
    }
}
