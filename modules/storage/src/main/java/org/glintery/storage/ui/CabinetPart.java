package org.glintery.storage.ui;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTextField;
import javax.swing.event.DocumentEvent;
import javax.swing.event.DocumentListener;
import net.miginfocom.swing.MigLayout;
import org.glintery.api.GlinteryException;
import org.glintery.api.ledger.Spot;
import org.glintery.api.stash.Stash;
import org.glintery.api.storage.Storage;
import org.glintery.api.workshop.View;
import org.glintery.workbench.parts.Buttons;
import org.glintery.workbench.parts.EmptyNote;
import org.glintery.workbench.parts.PageScroll;
import org.glintery.workbench.parts.Pictogram;
import org.glintery.workbench.parts.SectionHeading;
import org.glintery.workbench.parts.Space;
import org.glintery.workbench.parts.Texts;
import org.glintery.workbench.spi.Desk;
import org.glintery.workbench.spi.ScreenPart;
import org.openide.util.NbBundle.Messages;

/** The Cabinet: holders as they are, bags beside them, a search that lights pockets up, kit up and kit down. */
final class CabinetPart implements ScreenPart<CabinetSheet> {

    private static final int BAGS_PX = 280;

    private final Desk desk;
    private final Storage storage;
    private final SpotTransfer transfer = new SpotTransfer(this::move);
    private final Map<UUID, HolderView> drawn = new HashMap<>();
    private final JTextField search = new JTextField();
    private final BagList bags = new BagList(transfer);
    private final JPanel holders =
            new JPanel(new MigLayout("insets 0, fillx, wrap 1, gapy " + Space.TIGHT, "[grow, fill]"));
    private final JPanel page = new JPanel(new MigLayout(
            "insets " + Space.SECTION + ", fill, gapx " + Space.SECTION + ", gapy " + Space.APART,
            "[grow, fill][" + Space.px(BAGS_PX) + "!, fill]",
            "[][grow, fill]"));
    private CabinetSheet shown = new CabinetSheet(List.of(), List.of());

    @Messages({
        "CabinetPart.search=Find a drill by code, name or symbol",
        "CabinetPart.kitUp=Kit up",
        "CabinetPart.kitDown=Kit down",
        "CabinetPart.addHolder=Add a holder",
        "CabinetPart.bags=Bags"
    })
    CabinetPart(Desk desk) {
        this.desk = desk;
        this.storage = desk.workshop()
                .find(Storage.class)
                .orElseThrow(() -> new GlinteryException("storage brings this window but not its service"));
        search.putClientProperty("JTextField.placeholderText", Bundle.CabinetPart_search());
        search.getAccessibleContext().setAccessibleName(Bundle.CabinetPart_search());
        search.getDocument().addDocumentListener(new Typed(this::find));
        page.setOpaque(false);
        holders.setOpaque(false);
        JPanel bar = new JPanel(new MigLayout("insets 0, fillx, gap " + Space.NEAR, "[grow, fill][][][]"));
        bar.setOpaque(false);
        bar.add(search, "wmax " + Space.px(420));
        bar.add(Buttons.plain(Pictogram.BENCH, Bundle.CabinetPart_kitUp(), () -> new KitUpSheet(desk, storage).ask()));
        bar.add(Buttons.plain(
                Pictogram.DONE, Bundle.CabinetPart_kitDown(), () -> new KitDownSheet(desk, storage).ask()));
        bar.add(Buttons.plain(Pictogram.ADD, Bundle.CabinetPart_addHolder(), this::addHolder));
        page.add(bar, "span 2, wrap, wmin 0");
        page.add(new PageScroll(holders), "grow, wmin 0");
        JPanel beside = new JPanel(new MigLayout("insets 0, fill, wrap 1", "[grow, fill]", "[][grow, fill]"));
        beside.setOpaque(false);
        beside.add(new SectionHeading(Bundle.CabinetPart_bags()));
        beside.add(new JScrollPane(bags));
        page.add(beside, "grow");
    }

    @Override
    public CabinetSheet prepare(View view) {
        return CabinetSheet.of(view);
    }

    @Override
    public JComponent component() {
        return page;
    }

    @Override
    public void show(CabinetSheet sheet) {
        boolean sameHolders = headings(sheet).equals(headings(shown)) && holders.getComponentCount() > 0;
        shown = sheet;
        if (sameHolders) {
            sheet.holders().forEach(holder -> drawn.get(holder.id()).show(holder));
        } else {
            draw(sheet);
        }
        bags.show(sheet.bags());
        find();
    }

    @Messages({
        "CabinetPart.none=No holder yet",
        "CabinetPart.noneText=A holder is anything with pockets: a case, a tray, a tin. Add one, and its pockets can take drills.",
        "# {0} - name",
        "# {1} - state",
        "CabinetPart.holder={0}, {1}"
    })
    private void draw(CabinetSheet sheet) {
        holders.removeAll();
        drawn.clear();
        if (sheet.holders().isEmpty()) {
            holders.add(
                    new EmptyNote(
                            Pictogram.HOLDER,
                            Bundle.CabinetPart_none(),
                            Bundle.CabinetPart_noneText(),
                            Buttons.plain(Bundle.CabinetPart_addHolder(), this::addHolder)),
                    "growx");
        }
        for (CabinetSheet.HolderDrawing holder : sheet.holders()) {
            HolderView view = new HolderView(holder, transfer);
            JLabel heading = Texts.heading(Bundle.CabinetPart_holder(holder.name(), CabinetWords.state(holder)));
            heading.setLabelFor(view);
            holders.add(heading, "gaptop " + Space.APART + ", wmin 0");
            holders.add(view, "growx 0, alignx leading");
            drawn.put(holder.id(), view);
        }
        holders.revalidate();
        holders.repaint();
    }

    private static List<String> headings(CabinetSheet sheet) {
        return sheet.holders().stream()
                .map(holder -> holder.id() + holder.name() + CabinetWords.state(holder))
                .toList();
    }

    private void find() {
        String text = search.getText().strip();
        if (text.isEmpty()) {
            light(Set.of(), false);
            return;
        }
        desk.compute(
                view -> storage.find(view, text).stream()
                        .map(Storage.Whereabouts::spot)
                        .collect(Collectors.toSet()),
                spots -> {
                    if (search.getText().strip().equals(text)) {
                        light(spots, true);
                    }
                });
    }

    private void light(Set<Spot> spots, boolean searching) {
        drawn.values().forEach(view -> view.light(spots, searching));
        bags.light(spots, searching);
    }

    @Messages("CabinetPart.noStash=Drills can't be moved because the stash is switched off.")
    private void move(Spot from, Spot to) {
        Optional<Stash> stash = desk.workshop().find(Stash.class);
        if (stash.isEmpty()) {
            desk.say(Bundle.CabinetPart_noStash());
        } else {
            desk.change(view -> new PocketMoves(stash.get()).move(view, from, to));
        }
    }

    private void addHolder() {
        HolderForm.ask().ifPresent(holder -> desk.change(view -> storage.addHolder(view, UUID.randomUUID(), holder)));
    }

    /** Calls back whenever the text changes. */
    private record Typed(Runnable changed) implements DocumentListener {

        @Override
        public void insertUpdate(DocumentEvent e) {
            changed.run();
        }

        @Override
        public void removeUpdate(DocumentEvent e) {
            changed.run();
        }

        @Override
        public void changedUpdate(DocumentEvent e) {
            changed.run();
        }
    }
}
