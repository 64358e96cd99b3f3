package org.glintery.activework.ui;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.DefaultComboBoxModel;
import javax.swing.JComboBox;
import javax.swing.JLayeredPane;
import javax.swing.JPanel;
import javax.swing.OverlayLayout;
import net.miginfocom.swing.MigLayout;
import org.glintery.api.activework.Question;
import org.glintery.api.workshop.Picture;
import org.glintery.workbench.parts.PictureView;
import org.glintery.workbench.parts.Space;
import org.glintery.workbench.parts.Texts;
import org.glintery.workbench.spi.Desk;
import org.openide.util.NbBundle.Messages;

/** One of the pictures of a piece with the questions that are pinned to it. Event thread. */
final class PinnedPicture extends JPanel {
    private static final long serialVersionUID = 1L;
    private static final int WIDTH_PX = 380;
    private static final int HEIGHT_PX = 420;

    /** A picture to choose, by its caption or its number. */
    private record Choice(Picture picture, String words) {
        @Override
        public String toString() {
            return words;
        }
    }

    private final PictureView view;
    private final PinLayer pins;
    private final JComboBox<Choice> choices = new JComboBox<>();
    private transient QuestionsPage page = new QuestionsPage(List.of(), List.of());

    @Messages({
        "PinnedPicture.choose=Picture",
        "PinnedPicture.hint=Click the spot in doubt to ask about it; or move the cross with the arrow keys and press Enter."
    })
    PinnedPicture(Desk desk, Consumer<Question.Pin> ask) {
        super(new MigLayout("insets 0, fillx, wrap 1, hidemode 3, gapy " + Space.NEAR, "[grow, fill]"));
        setOpaque(false);
        view = new PictureView(desk, WIDTH_PX, HEIGHT_PX);
        pins = new PinLayer(
                view, (x, y) -> chosen().ifPresent(picture -> ask.accept(new Question.Pin(picture.hash(), x, y))));
        JLayeredPane both = new JLayeredPane();
        both.setLayout(new OverlayLayout(both));
        both.add(view, JLayeredPane.DEFAULT_LAYER);
        both.add(pins, JLayeredPane.PALETTE_LAYER);
        choices.getAccessibleContext().setAccessibleName(Bundle.PinnedPicture_choose());
        choices.addActionListener(e -> showChosen());
        add(choices, "wmin 0");
        add(both, "h " + Space.px(HEIGHT_PX) + "!, wmin 0");
        add(Texts.wrappedHint(Bundle.PinnedPicture_hint()), "wmin 0");
    }

    @Messages({"# {0} - number", "PinnedPicture.nth=Picture {0}"})
    void show(QuestionsPage newPage) {
        boolean same = newPage.pictures().equals(page.pictures());
        page = newPage;
        if (!same) {
            Optional<Picture> before = chosen();
            DefaultComboBoxModel<Choice> model = new DefaultComboBoxModel<>();
            for (Picture picture : page.pictures()) {
                String words = picture.caption().isBlank()
                        ? Bundle.PinnedPicture_nth(String.valueOf(model.getSize() + 1))
                        : picture.caption();
                model.addElement(new Choice(picture, words));
            }
            choices.setModel(model);
            choices.setVisible(model.getSize() > 1);
            before.ifPresent(this::choose);
        }
        showChosen();
    }

    /** Shows the picture a question is pinned to, the pin standing out. */
    void point(QuestionsPage.Line line) {
        page.pictures().stream()
                .filter(picture -> line.pinOn(picture).isPresent())
                .findFirst()
                .ifPresent(this::choose);
        pins.light(line.number());
        pins.requestFocusInWindow();
    }

    private void choose(Picture picture) {
        for (int i = 0; i < choices.getItemCount(); i++) {
            if (Objects.equals(choices.getItemAt(i).picture(), picture)) {
                choices.setSelectedIndex(i);
            }
        }
    }

    private Optional<Picture> chosen() {
        return Optional.ofNullable((Choice) choices.getSelectedItem()).map(Choice::picture);
    }

    private void showChosen() {
        view.setPicture(chosen());
        pins.show(chosen().stream()
                .flatMap(picture -> page.lines().stream()
                        .flatMap(line -> line.pinOn(picture).stream()
                                .map(pin -> new PinLayer.Pin(
                                        line.number(),
                                        pin.x(),
                                        pin.y(),
                                        line.isOpen(),
                                        line.question().value().text()))))
                .toList());
        pins.light(0);
    }
}
