package org.glintery.activework.ui;

import java.awt.Dimension;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.time.LocalDate;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JTable;
import net.miginfocom.swing.MigLayout;
import org.glintery.api.activework.ActiveWork;
import org.glintery.api.activework.Sitting;
import org.glintery.api.finishes.Finishes;
import org.glintery.api.stash.Standing;
import org.glintery.api.stash.Stash;
import org.glintery.api.storage.Storage;
import org.glintery.api.workshop.Stored;
import org.glintery.api.workshop.View;
import org.glintery.workbench.parts.Buttons;
import org.glintery.workbench.parts.Needs;
import org.glintery.workbench.parts.PageScroll;
import org.glintery.workbench.parts.Pictogram;
import org.glintery.workbench.parts.SectionHeading;
import org.glintery.workbench.parts.Space;
import org.glintery.workbench.parts.Tables;
import org.glintery.workbench.parts.Texts;
import org.glintery.workbench.parts.WrappedText;
import org.glintery.workbench.spi.Desk;
import org.glintery.workbench.spi.ScreenPart;
import org.openide.util.NbBundle.Messages;

/** The Sittings tab: how far the piece is, the sitting that goes on, those before, and open questions. */
final class SittingsPart implements ScreenPart<SittingsPage> {

    private static final int MOST_ROWS_SHOWN = 10;

    private final Desk desk;
    private final ActiveWork bench;
    private final UUID piece;
    private final BenchActs acts;
    private final ProgressPanel progress = new ProgressPanel();
    private final RunningStrip running;
    private final SittingsTable rows = new SittingsTable();
    private final JTable table = Tables.readable(new JTable(rows), Bundle.SittingsPart_sittings());
    private final JComponent scrollingTable = Tables.scrolling(table);
    private final WrappedText none = Texts.wrappedHint(Bundle.SittingsPart_none());
    private final WrappedText less = Texts.wrappedHint("");
    private final JButton start;
    private final JButton rest;
    private final JButton complete;
    private final JButton correct;
    private final JButton remove;
    private final JComponent page;

    @Messages({
        "SittingsPart.progress=How far it is",
        "SittingsPart.start=Put on the bench",
        "SittingsPart.rest=Let it rest",
        "SittingsPart.complete=Complete it",
        "SittingsPart.sittings=Sittings",
        "SittingsPart.none=No sitting yet. Begin one now, or add one from before: how much was laid may be told in drills, in percent or in sections, or not at all.",
        "SittingsPart.add=Add a sitting",
        "SittingsPart.correct=Correct it",
        "SittingsPart.remove=Take it away"
    })
    SittingsPart(Desk desk, UUID piece) {
        this.desk = desk;
        this.bench = BenchOfDesk.of(desk);
        this.piece = piece;
        acts = new BenchActs(desk, piece);
        running = new RunningStrip(desk.clock(), acts);
        start = Buttons.plain(Pictogram.BENCH, Bundle.SittingsPart_start(), acts::putOnTheBench);
        rest = Buttons.plain(Pictogram.REST, Bundle.SittingsPart_rest(), acts::letRest);
        complete = Buttons.plain(Pictogram.DONE, Bundle.SittingsPart_complete(), acts::complete);
        correct = Buttons.plain(Pictogram.EDIT, Bundle.SittingsPart_correct(), this::correctSelected);
        remove = Buttons.plain(
                Pictogram.REMOVE, Bundle.SittingsPart_remove(), () -> selected().ifPresent(acts::remove));
        correct.setEnabled(false);
        remove.setEnabled(false);
        table.getSelectionModel().addListSelectionListener(e -> {
            correct.setEnabled(selected().isPresent());
            remove.setEnabled(selected().isPresent());
        });
        Tables.onKey(table, "ENTER", this::correctSelected);
        Tables.onKey(table, "DELETE", () -> selected().ifPresent(acts::remove));
        table.addMouseListener(new MouseAdapter() {
            @Override
            public void mouseClicked(MouseEvent e) {
                if (e.getClickCount() == 2) {
                    correctSelected();
                }
            }
        });
        less.setText(less());
        page = new PageScroll(column());
    }

    private JPanel column() {
        JPanel column = new JPanel(new MigLayout(
                "insets " + Space.SECTION + ", fillx, wrap 1, hidemode 3, gapy " + Space.APART,
                "[grow, fill, 0:pref:" + Space.px(Space.READING_WIDTH + 240) + "]"));
        column.setOpaque(false);
        column.add(new SectionHeading(Bundle.SittingsPart_progress(), start, rest, complete), "wmin 0");
        column.add(progress, "wmin 0");
        column.add(less, "wmin 0");
        column.add(running, "wmin 0");
        column.add(
                new SectionHeading(
                        Bundle.SittingsPart_sittings(),
                        Buttons.plain(Pictogram.ADD, Bundle.SittingsPart_add(), acts::addSitting),
                        correct,
                        remove),
                "wmin 0, gaptop " + Space.NEAR);
        column.add(none, "wmin 0");
        column.add(scrollingTable, "wmin 0");
        return column;
    }

    /** What completing does not do here, as what does it is switched off. */
    @Messages({
        "# {0} - what it needs",
        "SittingsPart.noLastDrills=Completing it books no last drills to its canvas. {0}",
        "# {0} - what it needs",
        "SittingsPart.noFinish=Completing it begins no finish. {0}",
        "# {0} - what it needs",
        "SittingsPart.noHolder=Completing it leaves its holder as it is. {0}"
    })
    private String less() {
        return Stream.of(
                        Needs.words(desk, Stash.class).map(Bundle::SittingsPart_noLastDrills),
                        Needs.words(desk, Finishes.class).map(Bundle::SittingsPart_noFinish),
                        Needs.words(desk, Storage.class).map(Bundle::SittingsPart_noHolder))
                .flatMap(Optional::stream)
                .collect(Collectors.joining("\n"));
    }

    @Override
    public SittingsPage prepare(View view) {
        return SittingsPage.of(view, bench, piece, LocalDate.now(desk.clock()));
    }

    @Override
    public JComponent component() {
        return page;
    }

    @Override
    public void show(SittingsPage shown) {
        acts.suggest(shown);
        Standing standing = shown.standing();
        boolean onTheBench = standing == Standing.ON_THE_BENCH;
        start.setVisible(!onTheBench && standing != Standing.MADE);
        rest.setVisible(onTheBench);
        complete.setVisible(onTheBench || standing == Standing.RESTING);
        less.setVisible(complete.isVisible() && !less.getText().isEmpty());
        progress.show(shown.progress(), shown.forecast());
        running.show(shown.running(), standing != Standing.MADE && standing != Standing.LET_GO);
        none.setVisible(shown.sittings().isEmpty());
        scrollingTable.setVisible(!shown.sittings().isEmpty());
        if (rows.show(shown.sittings())) {
            Tables.widths(table, SittingsTable.WIDTHS_PX);
            int visible = Math.min(MOST_ROWS_SHOWN, shown.sittings().size());
            table.setPreferredScrollableViewportSize(
                    new Dimension(Space.px(Space.READING_WIDTH), visible * table.getRowHeight()));
        }
        page.revalidate();
    }

    private void correctSelected() {
        selected().ifPresent(acts::correct);
    }

    private Optional<Stored<Sitting>> selected() {
        int row = table.getSelectedRow();
        return row >= 0 && row < rows.getRowCount() ? Optional.of(rows.row(row)) : Optional.empty();
    }
}
