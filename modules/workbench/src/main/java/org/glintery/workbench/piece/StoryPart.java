package org.glintery.workbench.piece;

import java.util.List;
import java.util.UUID;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTextArea;
import net.miginfocom.swing.MigLayout;
import org.glintery.api.stash.Piece;
import org.glintery.api.workshop.View;
import org.glintery.workbench.parts.PageScroll;
import org.glintery.workbench.parts.SectionHeading;
import org.glintery.workbench.parts.Space;
import org.glintery.workbench.parts.TextEdit;
import org.glintery.workbench.parts.Texts;
import org.glintery.workbench.spi.Desk;
import org.glintery.workbench.spi.ScreenPart;
import org.openide.util.NbBundle.Messages;

/** The story: a sheet to write on, and under it what happened. */
final class StoryPart implements ScreenPart<StoryPart.Story> {
    private static final int ROWS = 9;
    private static final int DATE_PX = 180;
    private final UUID piece;
    private final JTextArea words = new JTextArea(ROWS, 40);
    private final TextEdit edit;
    private final JPanel events = new JPanel(
            new MigLayout("insets 0, fillx, wrap 2, gapy " + Space.NEAR, "[" + DATE_PX + ":pref:][grow, fill]"));
    private final JComponent page;

    record Story(String words, List<Timeline.Event> events) {}

    @Messages({"StoryPart.words=In your words", "StoryPart.events=What happened"})
    StoryPart(Desk desk, UUID piece) {
        this.piece = piece;
        words.setLineWrap(true);
        words.setWrapStyleWord(true);
        words.getAccessibleContext().setAccessibleName(Bundle.StoryPart_words());
        PieceChanges changes = new PieceChanges(piece);
        edit = TextEdit.of(words, text -> desk.change(changes.story(text)));
        events.setOpaque(false);
        JPanel column = new JPanel(new MigLayout(
                "insets " + Space.SECTION + ", fillx, wrap 1, gapy " + Space.APART,
                "[grow, fill, 0:pref:" + Space.px(Space.READING_WIDTH + 160) + "]"));
        column.setOpaque(false);
        column.add(new SectionHeading(Bundle.StoryPart_words()));
        column.add(new JScrollPane(words), "wmin 0");
        column.add(new SectionHeading(Bundle.StoryPart_events()), "gaptop " + Space.NEAR);
        column.add(events, "wmin 0");
        page = new PageScroll(column);
    }

    @Override
    public Story prepare(View view) {
        String written =
                view.find(Piece.TYPE, piece).map(p -> p.value().story()).orElse("");
        return new Story(written, Timeline.of(view, piece));
    }

    @Override
    public JComponent component() {
        return page;
    }

    @Override
    @Messages("StoryPart.noEvents=Nothing with a date yet. Sittings, the finish and the frame will be told here.")
    public void show(Story story) {
        edit.show(story.words());
        events.removeAll();
        if (story.events().isEmpty()) {
            events.add(Texts.wrappedHint(Bundle.StoryPart_noEvents()), "span 2, wmin 0, growx");
        }
        for (Timeline.Event event : story.events()) {
            JLabel when = Texts.hint(event.when().map(w -> w.words()).orElse(""));
            events.add(when, "top");
            events.add(Texts.body(event.what()), "wmin 0");
        }
        events.revalidate();
        events.repaint();
    }
}
