package org.glintery.workbench.sheet;

import java.awt.event.ActionEvent;
import java.util.BitSet;
import java.util.Map;
import java.util.function.Consumer;
import javax.swing.AbstractAction;
import javax.swing.JComponent;
import javax.swing.KeyStroke;

/** The sheet from the keyboard: arrows move a cell cursor, plus and minus zoom, Home shows all. Event thread. */
final class SheetKeys {
    private static final double ZOOM = 1.25;
    private static final int LEAP = 10;

    private SheetKeys() {}

    static void install(ChartSheet sheet) {
        Map<String, Consumer<ChartSheet>> keys = Map.ofEntries(
                Map.entry("LEFT", s -> s.moveCursor(-1, 0)),
                Map.entry("RIGHT", s -> s.moveCursor(1, 0)),
                Map.entry("UP", s -> s.moveCursor(0, -1)),
                Map.entry("DOWN", s -> s.moveCursor(0, 1)),
                Map.entry("ctrl LEFT", s -> s.moveCursor(-LEAP, 0)),
                Map.entry("ctrl RIGHT", s -> s.moveCursor(LEAP, 0)),
                Map.entry("ctrl UP", s -> s.moveCursor(0, -LEAP)),
                Map.entry("ctrl DOWN", s -> s.moveCursor(0, LEAP)),
                Map.entry("SPACE", s -> s.useTool(false)),
                Map.entry("shift SPACE", s -> s.useTool(true)),
                Map.entry("typed +", s -> zoom(s, ZOOM)),
                Map.entry("typed -", s -> zoom(s, 1 / ZOOM)),
                Map.entry("HOME", ChartSheet::fit),
                Map.entry("ESCAPE", s -> s.select(new BitSet(), false)));
        keys.forEach((key, action) -> {
            sheet.getInputMap(JComponent.WHEN_FOCUSED).put(KeyStroke.getKeyStroke(key), key);
            sheet.getActionMap().put(key, new AbstractAction() {
                private static final long serialVersionUID = 1L;

                @Override
                public void actionPerformed(ActionEvent e) {
                    if (sheet.isReady()) {
                        action.accept(sheet);
                    }
                }
            });
        });
    }

    private static void zoom(ChartSheet sheet, double factor) {
        sheet.show(sheet.view().zoomedAt(sheet.getWidth() / 2.0, sheet.getHeight() / 2.0, factor));
    }
}
