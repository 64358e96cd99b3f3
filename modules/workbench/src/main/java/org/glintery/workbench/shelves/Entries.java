package org.glintery.workbench.shelves;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.UUID;
import org.glintery.api.Result;
import org.glintery.api.exchange.LegendReader;
import org.glintery.api.finishes.Finishes;
import org.glintery.api.stash.Stash;
import org.glintery.workbench.parts.Asking;
import org.glintery.workbench.parts.PictureDrop;
import org.glintery.workbench.spi.Desk;
import org.openide.util.NbBundle.Messages;

/** How pieces come onto the shelves: a kit, a piece of one's own, an old finish. Event thread. */
public final class Entries {
    private static final List<String> PICTURES = List.of("png", "jpg", "jpeg", "webp", "tif", "tiff", "gif", "bmp");

    private Entries() {}

    @Messages({
        "Entries.kitTitle=Shelve a kit",
        "Entries.kitDo=Shelve it",
        "Entries.pieceTitle=A piece of your own",
        "Entries.ofKitTitle=A piece of this kit",
        "Entries.pieceDo=Shelve it",
        "Entries.noStash=Kits and pieces are switched off. Switch them on to shelve a kit.",
        "Entries.noFinishes=Finishes are switched off. Switch them on to write a finish.",
        "Entries.noLegends=Legend files can't be read because bringing kits in is switched off."
    })
    public static void newKit(Desk desk) {
        shelve(desk, new KitForm(desk, new Origin.NewKit()), Bundle.Entries_kitTitle(), Bundle.Entries_kitDo());
    }

    /** A piece from an own picture: no kit. */
    public static void newPiece(Desk desk) {
        shelve(desk, new KitForm(desk, new Origin.Own()), Bundle.Entries_pieceTitle(), Bundle.Entries_pieceDo());
    }

    /** A piece of a kit that is on the shelves already. */
    static void newPieceOf(Desk desk, UUID kit, String title) {
        KitForm form = new KitForm(desk, new Origin.OfKit(kit));
        form.suggestTitle(title);
        shelve(desk, form, Bundle.Entries_ofKitTitle(), Bundle.Entries_pieceDo());
    }

    /** A kit begun with files: photos become its pictures, the first other file is read as its legend. */
    static void newKitFrom(Desk desk, List<Path> files) {
        KitForm form = new KitForm(desk, new Origin.NewKit());
        for (Path file : files) {
            form.suggestTitle(KitForm.titleOf(file));
            if (isPicture(file)) {
                PictureDrop.take(desk, file, form::addPicture);
            } else {
                readLegend(desk, form, file);
            }
        }
        shelve(desk, form, Bundle.Entries_kitTitle(), Bundle.Entries_kitDo());
    }

    static void readLegend(Desk desk, KitForm form, Path file) {
        Optional<LegendReader> reader = desk.workshop().find(LegendReader.class);
        if (reader.isEmpty()) {
            form.legendRefused(Bundle.Entries_noLegends());
            return;
        }
        LegendReader.Assumed assumed = form.assumed();
        desk.compute(view -> reader.get().read(file, assumed), result -> {
            if (result instanceof Result.Ok<LegendReader.Reading> ok) {
                form.legendRead(new ReadLegend(file, assumed, ok.value()));
            } else if (result instanceof Result.Refused<LegendReader.Reading> no) {
                form.legendRefused(no.refusal().text());
            }
        });
    }

    private static void shelve(Desk desk, KitForm form, String title, String doIt) {
        Optional<Stash> stash = desk.workshop().find(Stash.class);
        if (stash.isEmpty()) {
            desk.say(Bundle.Entries_noStash());
        } else if (Asking.ask(title, form, doIt, form::ready)) {
            KitDraft draft = form.draft();
            UUID piece = UUID.randomUUID();
            desk.change(view -> draft.change(view, stash.get(), piece, desk.clock()), applied -> desk.openPiece(piece));
        }
    }

    /** Finishes from before, one after another. */
    public static void oldFinish(Desk desk) {
        desk.workshop()
                .find(Finishes.class)
                .ifPresentOrElse(
                        finishes -> new OldFinishes(desk, finishes).ask(), () -> desk.say(Bundle.Entries_noFinishes()));
    }

    private static boolean isPicture(Path file) {
        String name = file.getFileName().toString().toLowerCase(Locale.ROOT);
        return PICTURES.contains(name.substring(name.lastIndexOf('.') + 1));
    }
}
