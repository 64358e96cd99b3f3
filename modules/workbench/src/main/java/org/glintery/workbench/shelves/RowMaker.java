package org.glintery.workbench.shelves;

import java.util.HashSet;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.glintery.api.framing.FramePlan;
import org.glintery.api.ledger.Body;
import org.glintery.api.ledger.Coating;
import org.glintery.api.ledger.Drill;
import org.glintery.api.stash.Kit;
import org.glintery.api.stash.Legend;
import org.glintery.api.stash.LegendLine;
import org.glintery.api.stash.Piece;
import org.glintery.api.workshop.Stored;
import org.glintery.api.workshop.View;
import org.glintery.workbench.piece.PieceWords;
import org.openide.util.NbBundle.Messages;

/** Makes rows of the shelves. Pure. */
final class RowMaker {
    private final View view;

    RowMaker(View view) {
        this.view = view;
    }

    ShelfRow.Sources sources(Stored<Piece> piece) {
        Optional<Kit> kit =
                piece.value().kit().flatMap(id -> view.find(Kit.TYPE, id)).map(Stored::value);
        return new ShelfRow.Sources(
                piece.value(),
                kit,
                view.find(Legend.TYPE, piece.id()).map(Stored::value),
                view.find(FramePlan.TYPE, piece.id()).map(Stored::value));
    }

    ShelfRow row(Stored<Piece> stored, ShelfRow.Sources sources) {
        Piece piece = stored.value();
        Optional<Kit> kit = sources.kit();
        String size = PieceWords.size(piece.canvas());
        String second = kit.map(Kit::title)
                .filter(title -> !title.equalsIgnoreCase(piece.title()))
                .map(title -> size.isEmpty() ? title : title + " · " + size)
                .orElse(size);
        return new ShelfRow(
                stored.id(),
                piece.title(),
                second,
                Optional.of(piece.standing()),
                piece.pictures().stream().findFirst(),
                searched(piece, sources),
                sources);
    }

    /** A kit that has no piece yet. */
    ShelfRow row(Stored<Kit> kit) {
        Kit value = kit.value();
        return new ShelfRow(
                kit.id(),
                value.title(),
                value.source().orElse(""),
                Optional.empty(),
                value.pictures().stream().findFirst(),
                (value.title() + "\n" + value.source().orElse("") + "\nkit").toLowerCase(Locale.ROOT),
                new ShelfRow.Sources(null, Optional.of(value), Optional.empty(), Optional.empty()));
    }

    private static String searched(Piece piece, ShelfRow.Sources sources) {
        StringBuilder text = new StringBuilder(128);
        text.append(piece.title()).append('\n');
        text.append(PieceWords.standing(piece.standing())).append('\n');
        text.append(PieceWords.size(piece.canvas())).append('\n');
        piece.drillShape()
                .ifPresent(shape ->
                        text.append(PieceWords.shape(shape)).append(" ").append("drill\n"));
        sources.kit()
                .ifPresent(k -> text.append(k.title())
                        .append('\n')
                        .append(k.source().orElse(""))
                        .append('\n'));
        sources.legend().ifPresent(l -> codes(text, l));
        sources.plan().ifPresent(plan -> frame(text, plan));
        text.append('\n').append(piece.story());
        return text.toString().toLowerCase(Locale.ROOT);
    }

    private static void frame(StringBuilder text, FramePlan plan) {
        text.append(PieceWords.frame(plan.decision())).append('\n');
        plan.moulding().ifPresent(moulding -> text.append(moulding.name()).append('\n'));
        text.append(plan.livesAt()).append('\n').append(plan.notes());
    }

    @Messages("RowMaker.ab=AB aurora borealis")
    private static void codes(StringBuilder text, Legend legend) {
        Set<String> said = new HashSet<>();
        for (LegendLine line : legend.lines()) {
            Drill drill = line.drill();
            if (said.add(drill.code())) {
                text.append(drill.code()).append('\n');
            }
            if (drill.coating() != Coating.NONE && said.add(drill.coating().name())) {
                text.append(
                                drill.coating() == Coating.AB
                                        ? Bundle.RowMaker_ab()
                                        : drill.coating().name())
                        .append('\n');
            }
            if (drill.body() != Body.RESIN && said.add(drill.body().name())) {
                text.append(drill.body().name()).append('\n');
            }
        }
    }
}
