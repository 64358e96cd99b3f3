package org.glintery.stash.ui;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.function.Consumer;
import java.util.function.Function;
import org.glintery.api.Result;
import org.glintery.api.exchange.LegendReader.Reading;
import org.glintery.api.stash.CardEntry;
import org.glintery.api.stash.Legend;
import org.glintery.api.stash.LegendLine;
import org.glintery.api.stash.Stash;
import org.glintery.api.workshop.ChangeSet;
import org.glintery.api.workshop.NewPicture;
import org.glintery.api.workshop.View;
import org.glintery.workbench.parts.PictureDrop;

/** The changes that the legend tab makes, each from the newest view. Made without Swing; any thread. */
final class LegendEdits {

    private final Stash stash;
    private final UUID piece;

    LegendEdits(Stash stash, UUID piece) {
        this.stash = stash;
        this.piece = piece;
    }

    Function<View, Result<ChangeSet>> add(LegendLine line) {
        return edit(lines -> lines.add(line));
    }

    /** Replaces a line, if it still is the one that was shown. */
    Function<View, Result<ChangeSet>> replace(LegendLine shown, LegendLine now) {
        return edit(lines -> {
            int index = lines.indexOf(shown);
            if (index >= 0) {
                lines.set(index, now);
            }
        });
    }

    Function<View, Result<ChangeSet>> remove(List<LegendLine> shown) {
        return edit(lines -> shown.forEach(lines::remove));
    }

    /** Takes in what was read. @param replacing whether the old lines go */
    Function<View, Result<ChangeSet>> takeIn(Reading reading, String card, boolean replacing) {
        return view -> {
            List<LegendLine> lines = new ArrayList<>(
                    replacing ? List.of() : Legend.of(view, piece).lines());
            lines.addAll(reading.lines());
            return stash.saveLegend(view, piece, lines, Map.of(card, reading.entries()));
        };
    }

    Function<View, Result<ChangeSet>> describe(LegendLine line, CardEntry entry) {
        return view -> stash.describe(view, line.drill().card(), line.drill().code(), entry);
    }

    /** Keeps a photo of the printed legend with it. */
    Function<View, Result<ChangeSet>> keepPhoto(PictureDrop.Taken taken) {
        return view -> stash.keepLegendPhoto(view, piece, new NewPicture(taken.picture(), taken.blob()));
    }

    private Function<View, Result<ChangeSet>> edit(Consumer<List<LegendLine>> edit) {
        return view -> {
            List<LegendLine> lines = new ArrayList<>(Legend.of(view, piece).lines());
            edit.accept(lines);
            return stash.saveLegend(view, piece, lines);
        };
    }
}
