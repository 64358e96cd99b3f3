package org.glintery.workbench.desk;

import java.util.Optional;
import javax.swing.JButton;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JProgressBar;
import javax.swing.SwingUtilities;
import net.miginfocom.swing.MigLayout;
import org.glintery.workbench.parts.Buttons;
import org.glintery.workbench.parts.Space;
import org.glintery.workbench.parts.Texts;
import org.openide.awt.StatusDisplayer;
import org.openide.util.NbBundle.Messages;

/**
 * The foot of the window: what was said last, and the long work that is under way with a button to leave it. Made by
 * the platform, from the layer. Event thread.
 */
public final class StatusLine extends JPanel {
    private static final long serialVersionUID = 1L;
    private static final int BAR_PX = 180;
    private static final int STEPS = 1000;
    private final JLabel said = Texts.hint(" ");
    private final JLabel working = Texts.hint("");
    private final JProgressBar bar = new JProgressBar(0, STEPS);
    private final JButton leave =
            Buttons.link(Bundle.StatusLine_leave(), () -> LongWork.current().ifPresent(LongWork::leave));

    @Messages("StatusLine.leave=Stop it")
    public StatusLine() {
        super(new MigLayout(
                "insets " + Space.TIGHT + " " + Space.APART + " " + Space.TIGHT + " " + Space.APART
                        + ", fillx, hidemode 3, gapx " + Space.APART,
                "[grow, fill][][" + Space.px(BAR_PX) + "!, fill][]"));
        add(said, "wmin 0");
        add(working, "wmin 0");
        add(bar);
        add(leave);
        StatusDisplayer.getDefault().addChangeListener(e -> SwingUtilities.invokeLater(this::say));
        LongWork.listen(() -> SwingUtilities.invokeLater(this::work));
        say();
        work();
    }

    private void say() {
        String text = StatusDisplayer.getDefault().getStatusText();
        said.setText(text == null || text.isEmpty() ? " " : text);
        said.setToolTipText(said.getText().isBlank() ? null : text);
    }

    private void work() {
        Optional<LongWork> now = LongWork.current();
        for (var part : new javax.swing.JComponent[] {working, bar, leave}) {
            part.setVisible(now.isPresent());
        }
        now.ifPresent(work -> {
            working.setText(work.name());
            bar.setIndeterminate(work.share() <= 0);
            bar.setValue((int) (work.share() * STEPS));
            bar.getAccessibleContext().setAccessibleName(work.name());
            leave.setVisible(work.canBeLeft());
        });
    }
}
