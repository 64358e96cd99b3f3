package org.glintery.storage.ui;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTextField;
import net.miginfocom.swing.MigLayout;
import org.glintery.api.Result;
import org.glintery.api.ledger.Spot;
import org.glintery.api.stash.Stash;
import org.glintery.api.storage.SpotNames;
import org.glintery.api.time.About;
import org.glintery.workbench.parts.Asking;
import org.glintery.workbench.parts.DrillSwatch;
import org.glintery.workbench.parts.PageScroll;
import org.glintery.workbench.parts.Space;
import org.glintery.workbench.parts.Texts;
import org.glintery.workbench.parts.WrappedText;
import org.glintery.workbench.spi.Desk;
import org.openide.util.NbBundle.Messages;

/** Asks how many drills really lie in a place. Event thread. */
final class CountSheet {
    private static final int WIDTH_PX = 480;
    private static final int MOST_HEIGHT_PX = 360;
    private static final int SWATCH_PX = 22;
    private final Desk desk;
    private final Spot spot;
    private final List<CabinetSheet.Content> contents;
    private final List<JTextField> fields = new ArrayList<>();
    private final WrappedText told = Texts.wrappedHint("");

    CountSheet(Desk desk, Spot spot, List<CabinetSheet.Content> contents) {
        this.desk = desk;
        this.spot = spot;
        this.contents = contents;
    }

    @Messages({
        "CountSheet.noStash=Drills can't be counted because kits and pieces are switched off.",
        "# {0} - place",
        "CountSheet.title=Count what is in {0}",
        "CountSheet.do=Keep the count",
        "CountSheet.hint=Such as 1240, or about 200. What is left empty was not counted and stays as it is. The difference is booked, and can be undone."
    })
    void ask() {
        Optional<Stash> stash = desk.workshop().find(Stash.class);
        if (stash.isEmpty()) {
            desk.say(Bundle.CountSheet_noStash());
            return;
        }
        JPanel sheet = new JPanel(
                new MigLayout("insets 0, wrap 1, gapy " + Space.APART, "[" + Space.px(WIDTH_PX) + "!, fill]"));
        sheet.setOpaque(false);
        sheet.add(new PageScroll(lines()), "hmax " + Space.px(MOST_HEIGHT_PX));
        told.setText(Bundle.CountSheet_hint());
        sheet.add(told, "wmin 0");
        About today = About.on(LocalDate.now(desk.clock()));
        boolean agreed = Asking.ask(
                Bundle.CountSheet_title(SpotNames.words(desk.view(), spot)),
                sheet,
                Bundle.CountSheet_do(),
                () -> isUnderstood(stash.get(), today));
        if (agreed) {
            SpotCount count = typed();
            desk.change(view -> count.change(view, stash.get(), today));
        }
    }

    @Messages({"# {0} - drill", "CountSheet.counted=Counted of {0}", "# {0} - amount", "CountSheet.booked=booked: {0}"})
    private JPanel lines() {
        JPanel lines = new JPanel(new MigLayout(
                "insets 0, fillx, wrap 4, gapx " + Space.APART + ", gapy " + Space.NEAR,
                "[][grow, fill][trailing][" + Space.px(120) + "!, fill]"));
        lines.setOpaque(false);
        for (CabinetSheet.Content content : contents) {
            JTextField field = new JTextField();
            String code = content.drill().code();
            field.getAccessibleContext().setAccessibleName(Bundle.CountSheet_counted(code));
            fields.add(field);
            lines.add(new JLabel(DrillSwatch.icon(content.look(), SWATCH_PX)));
            lines.add(Texts.body(code + " " + content.name().orElse("")), "wmin 0");
            lines.add(Texts.hint(Bundle.CountSheet_booked(content.balance().words())));
            lines.add(field);
        }
        return lines;
    }

    private boolean isUnderstood(Stash stash, About on) {
        Result<?> change = typed().change(desk.view(), stash, on);
        told.setText(change instanceof Result.Refused<?> no ? no.refusal().text() : Bundle.CountSheet_hint());
        return change instanceof Result.Ok<?>;
    }

    private SpotCount typed() {
        List<SpotCount.Line> lines = new ArrayList<>();
        for (int i = 0; i < contents.size(); i++) {
            lines.add(new SpotCount.Line(contents.get(i).drill(), fields.get(i).getText()));
        }
        return new SpotCount(spot, lines);
    }
}
