package org.glintery.workbench.menu;

import java.awt.Dimension;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;
import org.glintery.workbench.parts.PageScroll;
import org.glintery.workbench.parts.Space;
import org.glintery.workbench.parts.Texts;
import org.glintery.workbench.words.Word;
import org.openide.DialogDescriptor;
import org.openide.DialogDisplayer;
import org.openide.util.NbBundle.Messages;
import org.openide.util.Utilities;

/** The words of the trade and ours, explained. Event thread. */
final class GlossarySheet {
    private static final int WIDTH_PX = 620;
    private static final int WORD_PX = 150;
    private static final int HEIGHT_PX = 560;
    private static final int ROUND_IT_PX = 170;

    private GlossarySheet() {}

    @Messages("GlossarySheet.title=Words we use")
    static void show() {
        JPanel page = new JPanel(new MigLayout(
                "insets " + Space.SECTION + ", fillx, wrap 2, gapx " + Space.SECTION + ", gapy " + Space.APART,
                "[" + Space.px(WORD_PX) + "!][grow, fill]"));
        words().forEach(word -> {
            page.add(Texts.heading(word.term()), "top");
            page.add(Texts.body(word.meaning()), "wmin 0");
        });
        PageScroll scroll = new PageScroll(page);
        int room = Utilities.getUsableScreenBounds().height - Space.px(ROUND_IT_PX);
        scroll.setPreferredSize(new Dimension(Space.px(WIDTH_PX), Math.min(Space.px(HEIGHT_PX), room)));
        DialogDescriptor descriptor = new DialogDescriptor(scroll, Bundle.GlossarySheet_title());
        descriptor.setOptions(new Object[] {DialogDescriptor.CLOSED_OPTION});
        descriptor.setModal(false);
        DialogDisplayer.getDefault().createDialog(descriptor).setVisible(true);
    }

    private static List<Word> words() {
        return Arrays.stream(Word.values())
                .sorted(Comparator.comparing(Word::term, String.CASE_INSENSITIVE_ORDER))
                .toList();
    }
}
