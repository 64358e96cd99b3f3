package org.glintery.workbench.parts;

import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.time.Clock;
import java.time.LocalDate;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.JPanel;
import javax.swing.JTextField;
import net.miginfocom.swing.MigLayout;
import org.glintery.api.Stable;
import org.glintery.api.time.About;
import org.openide.util.NbBundle.Messages;

/**
 * A date typed as people say it, with what was understood echoed under it: "about October", "autumn 2023". Event
 * thread.
 */
@Stable
public final class AboutField extends JPanel {
    private static final long serialVersionUID = 1L;
    private final JTextField field = new JTextField(18);
    private final WrappedText echo = Texts.wrappedHint("");
    private final transient Clock clock;
    private transient Consumer<Optional<About>> committed = about -> {};
    private transient Optional<About> last = Optional.empty();

    public AboutField(Clock clock) {
        super(new MigLayout("insets 0, fillx, wrap 1, gapy " + Space.HAIR, "[grow, fill]"));
        setOpaque(false);
        this.clock = clock;
        add(field);
        add(echo, "wmin 0");
        Typing.into(field, this::read);
        OpenEdits.join(field, this::commit);
        field.addActionListener(e -> commit());
        field.addFocusListener(new FocusAdapter() {
            @Override
            public void focusLost(FocusEvent e) {
                commit();
            }
        });
        read();
    }

    /** What was typed, when it is understood; empty also when nothing was typed. */
    public Optional<About> value() {
        return About.said(field.getText().strip(), LocalDate.now(clock));
    }

    /** Whether the field is empty or what stands in it is understood. */
    public boolean isUnderstood() {
        return field.getText().isBlank() || value().isPresent();
    }

    /** Shows a date in words, unless the user is typing. */
    public void setValue(Optional<About> value) {
        if (!field.isFocusOwner() || last.equals(value())) {
            last = value;
            field.setText(value.map(About::words).orElse(""));
        }
    }

    /** @param whenCommitted called when the field is left, or Enter pressed, with an understood date that is new */
    public void onCommit(Consumer<Optional<About>> whenCommitted) {
        committed = whenCommitted;
    }

    /** The text field itself: for labels and focus. */
    public JTextField field() {
        return field;
    }

    private void commit() {
        Optional<About> now = value();
        if (isUnderstood() && !now.equals(last)) {
            last = now;
            committed.accept(now);
        }
    }

    @Messages({
        "AboutField.hint=Such as 12 March 2024, about October, autumn 2023",
        "# {0} - the date in words",
        "AboutField.understood=Understood as {0}",
        "# {0} - the date in words",
        "# {1} - the other date in words",
        "AboutField.understoodNot=Understood as {0}, not as {1}. Write the month as a word to be sure",
        "AboutField.notUnderstood=Not understood yet: try a year, a month and year, or about October"
    })
    private void read() {
        String typed = field.getText().strip();
        if (typed.isEmpty()) {
            echo.setText(Bundle.AboutField_hint());
        } else {
            echo.setText(value().map(read -> understood(typed, read)).orElse(Bundle.AboutField_notUnderstood()));
        }
        field.getAccessibleContext().setAccessibleDescription(echo.getText());
    }

    private String understood(String typed, About read) {
        return About.otherwise(typed, LocalDate.now(clock))
                .map(other -> Bundle.AboutField_understoodNot(read.words(), other.words()))
                .orElseGet(() -> Bundle.AboutField_understood(read.words()));
    }
}
