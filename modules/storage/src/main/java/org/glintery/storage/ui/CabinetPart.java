package org.glintery.storage.ui;

import java.awt.Dimension;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTextField;
import net.miginfocom.swing.MigLayout;
import org.glintery.api.GlinteryException;
import org.glintery.api.ledger.Spot;
import org.glintery.api.stash.Stash;
import org.glintery.api.storage.Storage;
import org.glintery.api.workshop.View;
import org.glintery.workbench.parts.BesideOrBelow;
import org.glintery.workbench.parts.Buttons;
import org.glintery.workbench.parts.EmptyNote;
import org.glintery.workbench.parts.FlowRows;
import org.glintery.workbench.parts.Needs;
import org.glintery.workbench.parts.PageScroll;
import org.glintery.workbench.parts.Pictogram;
import org.glintery.workbench.parts.SectionHeading;
import org.glintery.workbench.parts.Space;
import org.glintery.workbench.parts.Texts;
import org.glintery.workbench.parts.Typing;
import org.glintery.workbench.parts.WrappedText;
import org.glintery.workbench.spi.Desk;
import org.glintery.workbench.spi.ScreenPart;
import org.openide.util.NbBundle.Messages;

/** The Cabinet: holders as they are, bags beside them, a search that lights pockets up, kit up and kit down. */
final class CabinetPart implements ScreenPart<CabinetSheet> {

    private static final int HOLDERS_PX = 300;
    private static final int BAGS_PX = 260;
    private static final int SEARCH_COLUMNS = 16;
    private static final int LOWEST_PX = 260;

    private final Desk desk;
    private final Storage storage;
    private final SpotTransfer transfer = new SpotTransfer(this::move);
    private final SpotMenu spots;
    private final HolderCares cares;
    private final Map<UUID, HolderView> drawn = new HashMap<>();
    private final JTextField search = new JTextField();
    private final BagList bags;
    private final JScrollPane list;
    private final WrappedText noBags = Texts.wrappedHint(Bundle.CabinetPart_noBags());
    private final FlowRows holders = FlowRows.ofTop();
    private final JComponent page;
    private CabinetSheet shown = new CabinetSheet(List.of(), List.of());

    @Messages({
        "CabinetPart.search=Find a drill by code, name or symbol",
        "CabinetPart.kitUp=Kit up",
        "CabinetPart.kitDown=Kit down",
        "CabinetPart.addHolder=Add a holder",
        "CabinetPart.bags=Bags",
        "CabinetPart.noBags=No drills lie in bags. What comes with a kit is put into a bag of its own, and so is what finds no room in a holder.",
        "# {0} - what it needs",
        "CabinetPart.still=Drills can''t be moved or counted here. {0}"
    })
    CabinetPart(Desk desk) {
        this.desk = desk;
        this.storage = desk.workshop()
                .find(Storage.class)
                .orElseThrow(() -> new GlinteryException("storage brings this window but not its service"));
        cares = new HolderCares(desk, storage);
        spots = new SpotMenu(desk, storage);
        bags = new BagList(transfer, spots);
        list = new JScrollPane(bags);
        search.setColumns(SEARCH_COLUMNS);
        search.putClientProperty("JTextField.placeholderText", Bundle.CabinetPart_search());
        search.getAccessibleContext().setAccessibleName(Bundle.CabinetPart_search());
        Typing.into(search, this::find);
        page = page();
    }

    private JComponent page() {
        FlowRows bar = FlowRows.growing(
                search,
                Buttons.plain(Pictogram.BENCH, Bundle.CabinetPart_kitUp(), () -> new KitUpSheet(desk, storage).ask()),
                Buttons.plain(
                        Pictogram.DONE, Bundle.CabinetPart_kitDown(), () -> new KitDownSheet(desk, storage).ask()),
                Buttons.plain(Pictogram.ADD, Bundle.CabinetPart_addHolder(), cares::add));
        JComponent cases = new PageScroll(holders);
        cases.setPreferredSize(new Dimension(Space.px(HOLDERS_PX), Space.px(LOWEST_PX)));
        JPanel beside =
                new JPanel(new MigLayout("insets 0, fill, wrap 1, hidemode 3", "[grow, fill]", "[][grow, fill]"));
        beside.setOpaque(false);
        beside.add(new SectionHeading(Bundle.CabinetPart_bags()), "wmin 0");
        beside.add(noBags, "wmin 0, growy 0, top");
        list.setPreferredSize(new Dimension(Space.px(BAGS_PX), Space.px(LOWEST_PX)));
        beside.add(list, "wmin 0");
        JPanel all = new JPanel(
                new MigLayout("insets " + Space.SECTION + ", fill, wrap 1, gapy " + Space.APART, "[grow, fill]"));
        all.setOpaque(false);
        all.add(bar, "wmin 0");
        Needs.words(desk, Stash.class)
                .ifPresent(needs -> all.add(Texts.wrappedHint(Bundle.CabinetPart_still(needs)), "wmin 0"));
        all.add(new BesideOrBelow(cases, HOLDERS_PX, beside, BAGS_PX), "wmin 0, pushy, growy");
        return new PageScroll(all);
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
        noBags.setVisible(sheet.bags().isEmpty());
        list.setVisible(!sheet.bags().isEmpty());
        find();
    }

    @Messages({
        "CabinetPart.none=No holder yet",
        "CabinetPart.noneText=A holder is anything with pockets: a case, a tray, a tin. Add one, and its pockets can take drills.",
        "# {0} - name",
        "# {1} - state",
        "CabinetPart.holder={0}, {1}",
        "# {0} - name",
        "CabinetPart.more=What can be done with {0}"
    })
    private void draw(CabinetSheet sheet) {
        holders.removeAll();
        drawn.clear();
        if (sheet.holders().isEmpty()) {
            holders.add(new EmptyNote(
                    Pictogram.HOLDER,
                    Bundle.CabinetPart_none(),
                    Bundle.CabinetPart_noneText(),
                    Buttons.plain(Bundle.CabinetPart_addHolder(), cares::add)));
        }
        for (CabinetSheet.HolderDrawing holder : sheet.holders()) {
            HolderView view = new HolderView(holder, transfer, spots);
            holders.add(block(holder, view));
            drawn.put(holder.id(), view);
        }
        holders.revalidate();
        holders.repaint();
    }

    private JPanel block(CabinetSheet.HolderDrawing holder, HolderView view) {
        JPanel block = new JPanel(new MigLayout("insets 0, fillx, gapy " + Space.TIGHT, "[grow, fill][]"));
        block.setOpaque(false);
        String words = Bundle.CabinetPart_holder(holder.name(), CabinetWords.state(holder));
        block.add(Texts.wrappedHeading(words), "wmin 0");
        JButton[] more = new JButton[1];
        more[0] =
                Buttons.icon(Pictogram.MORE, Bundle.CabinetPart_more(holder.name()), () -> cares.menu(holder, more[0]));
        block.add(more[0], "wrap");
        block.add(view, "span 2, wmin 0, gapbottom " + Space.APART);
        return block;
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

    @Messages("CabinetPart.noStash=Drills can't be moved because kits and pieces are switched off.")
    private void move(Spot from, Spot to) {
        Optional<Stash> stash = desk.workshop().find(Stash.class);
        if (stash.isEmpty()) {
            desk.say(Bundle.CabinetPart_noStash());
        } else {
            desk.change(view -> new PocketMoves(stash.get()).move(view, from, to));
        }
    }
}
