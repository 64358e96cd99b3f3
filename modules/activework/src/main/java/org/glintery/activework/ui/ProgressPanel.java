package org.glintery.activework.ui;

import java.util.Locale;
import javax.swing.JLabel;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;
import org.glintery.api.activework.Forecast;
import org.glintery.api.activework.Progress;
import org.glintery.api.ledger.Balance;
import org.glintery.workbench.parts.FlowRows;
import org.glintery.workbench.parts.HowWeKnow;
import org.glintery.workbench.parts.InkedBar;
import org.glintery.workbench.parts.Space;
import org.glintery.workbench.parts.Texts;
import org.glintery.workbench.parts.WrappedText;
import org.openide.util.NbBundle.Messages;

/** How far a piece is and when it will be done. Event thread. */
final class ProgressPanel extends JPanel {

    private static final long serialVersionUID = 1L;

    private final InkedBar bar = new InkedBar();
    private final JLabel laid = Texts.line("");
    private final WrappedText forecast = Texts.body("");
    private final HowWeKnow how = new HowWeKnow("");

    ProgressPanel() {
        super(new MigLayout("insets 0, fillx, wrap 1, hidemode 3, gapy " + Space.TIGHT, "[grow, fill]"));
        setOpaque(false);
        add(bar, "wmin 80");
        add(FlowRows.growing(laid, how), "wmin 0");
        add(forecast, "wmin 0");
    }

    @Messages({
        "# {0} - when",
        "ProgressPanel.done=Done {0}.",
        "# {0} - how many",
        "# {1} - the same in figures",
        "# {2} - how long",
        "ProgressPanel.worked={0,choice,1#One sitting|1<{1} sittings}, {2} in all."
    })
    void show(Progress progress, Forecast told) {
        bar.setShare(progress.share(), progress.estimated());
        laid.setText(LaidWords.of(progress));
        String when = told.likely().isPresent() && !told.howWeKnow().isEmpty()
                ? Bundle.ProgressPanel_done(told.words())
                : told.words();
        String worked = progress.minutes() > 0
                ? " "
                        + Bundle.ProgressPanel_worked(
                                progress.sittings(),
                                Balance.grouped(progress.sittings()),
                                LaidWords.minutes(progress.minutes()))
                : "";
        forecast.setText(sentence(when) + worked);
        how.setFigures(told.howWeKnow());
        revalidate();
    }

    private static String sentence(String words) {
        return words.isEmpty() ? words : words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
    }
}
