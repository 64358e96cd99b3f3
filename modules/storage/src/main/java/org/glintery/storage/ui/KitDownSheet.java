package org.glintery.storage.ui;

import java.time.LocalDate;
import java.util.Optional;
import java.util.UUID;
import javax.swing.JComboBox;
import javax.swing.JPanel;
import javax.swing.JSpinner;
import javax.swing.SpinnerNumberModel;
import net.miginfocom.swing.MigLayout;
import org.glintery.api.Result;
import org.glintery.api.ledger.Balance;
import org.glintery.api.storage.KitUp;
import org.glintery.api.storage.Storage;
import org.glintery.api.storage.Storage.LeftoversPlan;
import org.glintery.api.time.About;
import org.glintery.api.workshop.View;
import org.glintery.storage.ui.KittingChoices.Choice;
import org.glintery.workbench.parts.Asking;
import org.glintery.workbench.parts.FormSheet;
import org.glintery.workbench.parts.Space;
import org.glintery.workbench.parts.Tables;
import org.glintery.workbench.parts.Texts;
import org.glintery.workbench.parts.WrappedText;
import org.glintery.workbench.spi.Desk;
import org.openide.util.NbBundle.Messages;
import org.openide.util.Utilities;

/** Asks which piece is kitted down and how large its repair packet is, shows the plan, and does it. Event thread. */
final class KitDownSheet {

    private static final int WIDTH_PX = 860;
    /** What a dialog has on both sides of what is in it. */
    private static final int BESIDE_IT_PX = 200;

    private static final int USUAL_REPAIR_DRILLS = 10;
    private static final int MOST_REPAIR_DRILLS = 10_000;

    private final Desk desk;
    private final Storage storage;
    private final JComboBox<Choice> piece = new JComboBox<>();
    private final JSpinner repair = new JSpinner(new SpinnerNumberModel(USUAL_REPAIR_DRILLS, 0, MOST_REPAIR_DRILLS, 1));
    private final PlanTable rows = PlanTable.forKitDown();
    private final WrappedText words = Texts.wrappedHint("");
    private Optional<Result.Ok<LeftoversPlan>> plan = Optional.empty();

    KitDownSheet(Desk desk, Storage storage) {
        this.desk = desk;
        this.storage = storage;
    }

    @Messages("KitDownSheet.noPiece=No piece is in a holder and no leftovers lie in the bag of a kit.")
    void ask() {
        desk.compute(view -> KittingChoices.piecesToKitDown(view, storage), choices -> {
            if (choices.isEmpty()) {
                desk.say(Bundle.KitDownSheet_noPiece());
            } else {
                choices.forEach(piece::addItem);
                showAndDo();
            }
        });
    }

    @Messages({
        "KitDownSheet.title=Kit down",
        "KitDownSheet.do=Kit it down",
        "KitDownSheet.piece=Piece",
        "KitDownSheet.repair=Drills of each colour for the repair packet"
    })
    private void showAndDo() {
        JPanel sheet = new JPanel(new MigLayout("insets 0, wrap 1, gapy " + Space.APART, "[" + widthPx() + "!, fill]"));
        sheet.setOpaque(false);
        sheet.add(
                new FormSheet(2).field(Bundle.KitDownSheet_piece(), piece).field(Bundle.KitDownSheet_repair(), repair));
        sheet.add(words, "wmin 0");
        sheet.add(Tables.scrolling(rows.table()), "h " + PlanTable.heightPx() + "!");
        piece.addActionListener(e -> replan());
        repair.addChangeListener(e -> replan());
        replan();
        if (Asking.ask(Bundle.KitDownSheet_title(), sheet, Bundle.KitDownSheet_do(), () -> plan.isPresent())) {
            Result.Ok<LeftoversPlan> agreed = plan.orElseThrow();
            desk.change(view -> Result.ok(agreed.value().change(), agreed.warnings()));
        }
    }

    private static int widthPx() {
        int room = Utilities.getUsableScreenBounds().width - Space.px(BESIDE_IT_PX);
        return Math.min(Space.px(WIDTH_PX), room);
    }

    private void replan() {
        plan = Optional.empty();
        Choice what = (Choice) piece.getSelectedItem();
        int drills = (Integer) repair.getValue();
        Optional<About> today = Optional.of(About.on(LocalDate.now(desk.clock())));
        desk.compute(view -> planned(view, what.id(), drills, today), result -> {
            if (what.equals(piece.getSelectedItem()) && repair.getValue().equals(drills)) {
                show(result);
            }
        });
    }

    /** A piece that sits in no holder has the bags of its kit sorted. */
    private Result<LeftoversPlan> planned(View view, UUID id, int drills, Optional<About> today) {
        return KitUp.of(view, id).isEmpty()
                ? storage.planLeftovers(view, id, drills, today)
                : storage.planKitDown(view, id, drills, today)
                        .then(down -> Result.ok(new LeftoversPlan(down.change(), down.steps())));
    }

    @Messages({
        "# {0} - moves",
        "# {1} - moves in words",
        "KitDownSheet.plan={0,choice,0#Nothing is left to move.|1#One move.|1<{1} moves.}"
    })
    private void show(Result<LeftoversPlan> result) {
        if (result instanceof Result.Ok<LeftoversPlan> ok) {
            plan = Optional.of(ok);
            String text = Bundle.KitDownSheet_plan(
                    ok.value().steps().size(),
                    Balance.grouped(ok.value().steps().size()));
            words.setText(ok.warnings().isEmpty() ? text : text + " " + String.join(" ", ok.warnings()));
            rows.showSteps(
                    desk.view(),
                    ok.value().steps(),
                    new PlannedNames(desk.view(), ok.value().change()));
        } else if (result instanceof Result.Refused<LeftoversPlan> no) {
            words.setText(no.refusal().text());
            rows.clear();
        }
    }
}
