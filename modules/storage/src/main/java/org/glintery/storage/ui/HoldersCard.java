package org.glintery.storage.ui;

import java.util.List;
import java.util.UUID;
import javax.swing.JComponent;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;
import org.glintery.api.GlinteryException;
import org.glintery.api.stash.Piece;
import org.glintery.api.storage.Holder;
import org.glintery.api.storage.KitUp;
import org.glintery.api.storage.Storage;
import org.glintery.api.workshop.Settings;
import org.glintery.api.workshop.View;
import org.glintery.workbench.parts.Buttons;
import org.glintery.workbench.parts.Space;
import org.glintery.workbench.parts.Texts;
import org.glintery.workbench.spi.Desk;
import org.glintery.workbench.spi.ScreenPart;
import org.glintery.workbench.spi.TodayCard;
import org.openide.util.NbBundle.Messages;
import org.openide.util.lookup.ServiceProvider;

/** Which holders are free, and which wait to be cleared. */
@ServiceProvider(service = TodayCard.class)
public final class HoldersCard implements TodayCard {

    private static final int POSITION = 500;

    @Override
    @Messages("HoldersCard.title=Holders")
    public String title() {
        return Bundle.HoldersCard_title();
    }

    @Override
    public int position() {
        return POSITION;
    }

    @Override
    public boolean offered(View view) {
        return Settings.keepsDrills(view) || !view.all(Holder.TYPE).isEmpty();
    }

    @Override
    public ScreenPart<?> create(Desk desk) {
        return new Part(desk);
    }

    /** @param all how many holders there are */
    private record Holders(int all, List<String> free, List<ToClear> toClear) {}

    private record ToClear(UUID piece, String title, String holder) {}

    private static final class Part implements ScreenPart<Holders> {

        private final Desk desk;
        private final Storage storage;
        private final JPanel panel =
                new JPanel(new MigLayout("insets 0, fillx, wrap 1, gapy " + Space.TIGHT, "[grow, fill]"));

        Part(Desk desk) {
            this.desk = desk;
            this.storage = desk.workshop()
                    .find(Storage.class)
                    .orElseThrow(() -> new GlinteryException("storage brings this card but not its service"));
            panel.setOpaque(false);
        }

        @Override
        public Holders prepare(View view) {
            List<String> free = storage.freeHolders(view).stream()
                    .map(holder -> holder.value().name())
                    .toList();
            List<ToClear> toClear = view.all(KitUp.TYPE).stream()
                    .filter(kitUp -> kitUp.value().toClear())
                    .map(kitUp -> new ToClear(
                            kitUp.id(),
                            view.find(Piece.TYPE, kitUp.id())
                                    .map(p -> p.value().title())
                                    .orElse(""),
                            view.find(Holder.TYPE, kitUp.value().holder())
                                    .map(h -> h.value().name())
                                    .orElse("")))
                    .toList();
            return new Holders(view.all(Holder.TYPE).size(), free, toClear);
        }

        @Override
        public JComponent component() {
            return panel;
        }

        @Override
        @Messages({
            "HoldersCard.none=No holder yet. The Cabinet is where you add one.",
            "HoldersCard.noneFree=No holder is free.",
            "# {0} - names",
            "HoldersCard.free=Free: {0}",
            "# {0} - holder",
            "# {1} - title",
            "HoldersCard.toClear={0} waits to be cleared: {1} is made"
        })
        public void show(Holders holders) {
            panel.removeAll();
            if (holders.all() == 0) {
                panel.add(Texts.wrappedHint(Bundle.HoldersCard_none()), "wmin 0");
            } else {
                String free = holders.free().isEmpty()
                        ? Bundle.HoldersCard_noneFree()
                        : Bundle.HoldersCard_free(String.join(", ", holders.free()));
                panel.add(Texts.body(free), "wmin 0");
            }
            holders.toClear()
                    .forEach(one -> panel.add(
                            Buttons.link(
                                    Bundle.HoldersCard_toClear(one.holder(), one.title()),
                                    () -> desk.openPiece(one.piece())),
                            "growx 0, wmin 0"));
            panel.revalidate();
            panel.repaint();
        }
    }
}
