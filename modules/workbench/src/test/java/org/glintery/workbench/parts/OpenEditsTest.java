package org.glintery.workbench.parts;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import javax.swing.SwingUtilities;
import org.junit.jupiter.api.Test;

class OpenEditsTest {

    @Test
    void keepsWhatIsTyped_howeverDeepTheFieldLies_andOnlyOnce() throws Exception {
        List<String> kept = new ArrayList<>();
        SwingUtilities.invokeAndWait(() -> {
            JTextArea story = new JTextArea();
            TextEdit.of(story, kept::add).show("Before");
            JPanel inner = new JPanel();
            inner.add(story);
            JPanel outer = new JPanel();
            outer.add(inner);
            story.setText("After");

            OpenEdits.keepIn(outer);
            OpenEdits.keepIn(outer);
        });
        assertThat(kept).containsExactly("After");
    }
}
