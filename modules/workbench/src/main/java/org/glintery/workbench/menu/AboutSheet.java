package org.glintery.workbench.menu;

import javax.swing.JLabel;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;
import org.glintery.workbench.parts.Pictogram;
import org.glintery.workbench.parts.Space;
import org.glintery.workbench.parts.Texts;
import org.openide.DialogDescriptor;
import org.openide.DialogDisplayer;
import org.openide.util.NbBundle.Messages;

/** What this application is. Event thread. */
final class AboutSheet {
    private static final int ICON_PX = 64;
    private static final int WIDTH_PX = 380;

    private AboutSheet() {}

    @Messages({
        "AboutSheet.title=About Glintery",
        "AboutSheet.name=Glintery",
        "AboutSheet.text=A workshop on one screen for people who make diamond paintings. It keeps the pieces, the drills and the record of what was made, and does the sums.",
        "AboutSheet.yours=What you keep here is yours. It stays on your computer and can be read without this application.",
        "# {0} - version of Glintery and day",
        "# {1} - version of Java",
        "AboutSheet.facts={0}. Apache License 2.0. Made with the NetBeans Platform; runs on Java {1}."
    })
    static void show() {
        JPanel sheet = new JPanel(new MigLayout(
                "insets " + Space.PAGE + ", wrap 2, gapx " + Space.SECTION + ", gapy " + Space.APART,
                "[][" + Space.px(WIDTH_PX) + "!, fill]"));
        sheet.add(new JLabel(Pictogram.GLINTERY.at(ICON_PX)), "spany 4, top");
        sheet.add(Texts.title(Bundle.AboutSheet_name()));
        sheet.add(Texts.body(Bundle.AboutSheet_text()), "wmin 0");
        sheet.add(Texts.body(Bundle.AboutSheet_yours()), "wmin 0");
        sheet.add(
                Texts.wrappedHint(Bundle.AboutSheet_facts(
                        BuildWords.now(), Runtime.version().feature())),
                "wmin 0");
        DialogDescriptor descriptor = new DialogDescriptor(sheet, Bundle.AboutSheet_title());
        descriptor.setOptions(new Object[] {DialogDescriptor.CLOSED_OPTION});
        DialogDisplayer.getDefault().createDialog(descriptor).setVisible(true);
    }
}
