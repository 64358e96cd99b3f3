package org.glintery.workbench.looks;

import java.awt.Color;
import java.awt.GraphicsEnvironment;
import java.util.List;
import javax.swing.UIManager;
import org.openide.modules.OnStart;

/**
 * The platform's window tabs ask for their colours once and keep them. These colours are given in their place: they
 * answer with what the look and feel says now, so that the tabs follow a switch between light and dark.
 */
@OnStart
public final class LiveTabColours implements Runnable {
    private static final List<String> TABS = List.of("EditorTab.", "ViewTab.");
    private static final List<String> COLOURS = List.of(
            "background",
            "foreground",
            "activeBackground",
            "activeForeground",
            "selectedBackground",
            "selectedForeground",
            "hoverBackground",
            "hoverForeground",
            "selectedHoverBackground",
            "underlineColor",
            "inactiveUnderlineColor",
            "tabSeparatorColor",
            "attentionBackground",
            "attentionForeground");
    private static final List<String> OTHERS = List.of(
            "TabbedContainer.editor.contentBorderColor",
            "TabbedContainer.view.contentBorderColor",
            "Nb.EmptyEditorArea.background",
            "TabControlIcon.foreground",
            "TabControlIcon.disabledForeground",
            "TabControlIcon.rolloverBackground",
            "TabControlIcon.pressedBackground");

    @Override
    public void run() {
        if (GraphicsEnvironment.isHeadless()) {
            return;
        }
        for (String tab : TABS) {
            COLOURS.forEach(colour -> live(tab + colour));
        }
        OTHERS.forEach(LiveTabColours::live);
    }

    private static void live(String key) {
        UIManager.put(key, new LiveColour(key));
    }

    private static final class LiveColour extends Color {
        private static final long serialVersionUID = 1L;
        private final String key;

        LiveColour(String key) {
            super(0, true);
            this.key = key;
        }

        @Override
        public int getRGB() {
            Color now = key == null ? null : UIManager.getLookAndFeelDefaults().getColor(key);
            return now == null ? super.getRGB() : now.getRGB();
        }
    }
}
