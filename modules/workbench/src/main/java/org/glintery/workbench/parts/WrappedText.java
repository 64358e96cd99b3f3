package org.glintery.workbench.parts;

import java.awt.Dimension;
import javax.swing.JTextArea;
import javax.swing.text.DefaultCaret;
import org.glintery.api.Stable;

/** Text for reading that wraps between words. In MigLayout give it {@code growx, wmin 0}. Event thread. */
@Stable
public final class WrappedText extends JTextArea {
    private static final long serialVersionUID = 1L;
    private static final int NARROW_PX = 160;

    public WrappedText(String text) {
        super(text);
        DefaultCaret still = new DefaultCaret();
        still.setUpdatePolicy(DefaultCaret.NEVER_UPDATE); // or the page around it would scroll down to its end
        setCaret(still);
        setEditable(false);
        setFocusable(false);
        setLineWrap(true);
        setWrapStyleWord(true);
        setOpaque(false);
        setColumns(24);
        setRequestFocusEnabled(false);
        getAccessibleContext().setAccessibleName(text);
    }

    @Override
    public void setText(String text) {
        super.setText(text);
        if (accessibleContext != null) {
            accessibleContext.setAccessibleName(text);
        }
    }

    @Override
    public Dimension getMinimumSize() {
        return new Dimension(Math.min(Space.px(NARROW_PX), getPreferredSize().width), getPreferredSize().height);
    }
}
