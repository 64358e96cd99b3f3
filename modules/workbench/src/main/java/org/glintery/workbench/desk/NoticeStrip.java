package org.glintery.workbench.desk;

import com.formdev.flatlaf.FlatClientProperties;
import java.awt.Dimension;
import java.awt.event.ComponentAdapter;
import java.awt.event.ComponentEvent;
import javax.swing.JComponent;
import javax.swing.JFrame;
import javax.swing.JLabel;
import javax.swing.JLayeredPane;
import javax.swing.JPanel;
import javax.swing.KeyStroke;
import net.miginfocom.swing.MigLayout;
import org.glintery.workbench.parts.Buttons;
import org.glintery.workbench.parts.Pictogram;
import org.glintery.workbench.parts.Space;
import org.glintery.workbench.parts.Texts;
import org.glintery.workbench.parts.WrappedText;
import org.openide.util.NbBundle.Messages;
import org.openide.windows.WindowManager;

/** A sheet low in the main window that says something and stays until it is put away, by hand or because it is over. Event thread. */
final class NoticeStrip {
    private static final int WIDTH_PX = 560;
    private static final int ICON_PX = 24;
    private JPanel sheet;

    void show(Pictogram icon, String heading, String text) {
        if (!(WindowManager.getDefault().getMainWindow() instanceof JFrame frame)) {
            return;
        }
        putAway();
        JLayeredPane layers = frame.getLayeredPane();
        sheet = sheet(icon, heading, text);
        layers.add(sheet, JLayeredPane.POPUP_LAYER);
        place(layers);
        JPanel shown = sheet;
        layers.addComponentListener(new ComponentAdapter() {
            @Override
            public void componentResized(ComponentEvent e) {
                if (shown == sheet) {
                    place(layers);
                } else {
                    layers.removeComponentListener(this);
                }
            }
        });
    }

    @Messages("NoticeStrip.close=Put away")
    private JPanel sheet(Pictogram icon, String heading, String text) {
        JPanel panel = new JPanel(new MigLayout("insets 0, fillx, gap " + Space.NEAR, "[][grow, fill][]", "[][]"));
        panel.putClientProperty(FlatClientProperties.STYLE_CLASS, "notice");
        WrappedText words = Texts.body(text);
        words.setSize(Space.px(WIDTH_PX), Short.MAX_VALUE); // so that the height is known before it is laid out
        panel.add(new JLabel(icon.at(ICON_PX)), "spany 2, top");
        panel.add(Texts.heading(heading));
        panel.add(Buttons.icon(Pictogram.CLOSE, Bundle.NoticeStrip_close(), this::putAway), "spany 2, top, wrap");
        panel.add(words, "w " + Space.px(WIDTH_PX - 120) + "!");
        panel.registerKeyboardAction(
                e -> putAway(), KeyStroke.getKeyStroke("ESCAPE"), JComponent.WHEN_IN_FOCUSED_WINDOW);
        panel.getAccessibleContext().setAccessibleName(heading + ". " + text);
        return panel;
    }

    private void place(JLayeredPane layers) {
        Dimension wanted = sheet.getPreferredSize();
        int width = Math.min(wanted.width, layers.getWidth() - Space.px(Space.PAGE));
        sheet.setBounds(
                (layers.getWidth() - width) / 2,
                layers.getHeight() - wanted.height - Space.px(Space.PAGE + Space.NEAR),
                width,
                wanted.height);
        sheet.revalidate();
        layers.repaint();
    }

    void putAway() {
        if (sheet != null && sheet.getParent() != null) {
            JComponent layers = (JComponent) sheet.getParent();
            layers.remove(sheet);
            layers.repaint();
        }
        sheet = null;
    }
}
