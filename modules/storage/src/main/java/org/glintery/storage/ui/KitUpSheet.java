package org.glintery.storage.ui;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import javax.swing.JComboBox;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;
import org.glintery.api.Result;
import org.glintery.api.ledger.Balance;
import org.glintery.api.storage.Storage;
import org.glintery.api.storage.Storage.KitUpPlan;
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

/** Asks which piece goes into which holder, shows the plan, and does it. Event thread. */
final class KitUpSheet {

    private static final int WIDTH_PX = 620;

    private final Desk desk;
    private final Storage storage;
    private final JComboBox<Choice> piece = new JComboBox<>();
    private final JComboBox<Choice> holder = new JComboBox<>();
    private final PlanTable rows = PlanTable.forKitUp();
    private final WrappedText words = Texts.wrappedHint("");
    private Optional<Result.Ok<KitUpPlan>> plan = Optional.empty();

    KitUpSheet(Desk desk, Storage storage) {
        this.desk = desk;
        this.storage = storage;
    }

    @Messages({
        "KitUpSheet.noPiece=No piece waits to be kitted up. A piece needs a legend first; type or read it on its page.",
        "KitUpSheet.noHolder=There is no holder yet. Add one first."
    })
    void ask() {
        desk.compute(
                view -> List.of(KittingChoices.piecesToKitUp(view), KittingChoices.holders(view, storage)), choices -> {
                    if (choices.get(0).isEmpty()) {
                        desk.say(Bundle.KitUpSheet_noPiece());
                    } else if (choices.get(1).isEmpty()) {
                        desk.say(Bundle.KitUpSheet_noHolder());
                    } else {
                        choices.get(0).forEach(piece::addItem);
                        choices.get(1).forEach(holder::addItem);
                        showAndDo();
                    }
                });
    }

    @Messages({
        "KitUpSheet.title=Kit up",
        "KitUpSheet.do=Kit it up",
        "KitUpSheet.piece=Piece",
        "KitUpSheet.holder=Holder"
    })
    private void showAndDo() {
        JPanel sheet = new JPanel(
                new MigLayout("insets 0, wrap 1, gapy " + Space.APART, "[" + Space.px(WIDTH_PX) + "!, fill]"));
        sheet.setOpaque(false);
        sheet.add(new FormSheet(2).field(Bundle.KitUpSheet_piece(), piece).field(Bundle.KitUpSheet_holder(), holder));
        sheet.add(words, "wmin 0");
        sheet.add(Tables.scrolling(rows.table()), "h " + PlanTable.heightPx() + "!");
        piece.addActionListener(e -> replan());
        holder.addActionListener(e -> replan());
        replan();
        if (Asking.ask(Bundle.KitUpSheet_title(), sheet, Bundle.KitUpSheet_do(), () -> plan.isPresent())) {
            Result.Ok<KitUpPlan> agreed = plan.orElseThrow();
            desk.change(view -> Result.ok(agreed.value().change(), agreed.warnings()));
        }
    }

    private void replan() {
        plan = Optional.empty();
        Choice what = (Choice) piece.getSelectedItem();
        Choice where = (Choice) holder.getSelectedItem();
        Optional<About> today = Optional.of(About.on(LocalDate.now(desk.clock())));
        desk.compute(view -> storage.planKitUp(view, what.id(), where.id(), today), result -> {
            if (what.equals(piece.getSelectedItem()) && where.equals(holder.getSelectedItem())) {
                show(result);
            }
        });
    }

    @Messages({
        "# {0} - pockets",
        "# {1} - pockets in words",
        "# {2} - bags",
        "# {3} - bags in words",
        "KitUpSheet.plan={0,choice,0#No pocket|1#One pocket|1<{1} pockets}{2,choice,0#.|1# and one bag.|1< and {3} bags.}"
    })
    private void show(Result<KitUpPlan> result) {
        if (result instanceof Result.Ok<KitUpPlan> ok) {
            plan = Optional.of(ok);
            String text = Bundle.KitUpSheet_plan(
                    ok.value().pockets(),
                    Balance.grouped(ok.value().pockets()),
                    ok.value().bags(),
                    Balance.grouped(ok.value().bags()));
            words.setText(ok.warnings().isEmpty() ? text : text + " " + String.join(" ", ok.warnings()));
            View view = desk.view();
            rows.showSeats(
                    view, ok.value().seats(), new PlannedNames(view, ok.value().change()));
        } else if (result instanceof Result.Refused<KitUpPlan> no) {
            words.setText(no.refusal().text());
            rows.clear();
        }
    }
}
