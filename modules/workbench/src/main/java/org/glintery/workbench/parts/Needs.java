package org.glintery.workbench.parts;

import java.util.Optional;
import javax.swing.AbstractButton;
import javax.swing.JMenuItem;
import org.glintery.api.Preview;
import org.glintery.api.activework.ActiveWork;
import org.glintery.api.exchange.LegendReader;
import org.glintery.api.finishes.Finishes;
import org.glintery.api.framing.Framing;
import org.glintery.api.stash.Stash;
import org.glintery.api.storage.Storage;
import org.glintery.workbench.spi.Desk;
import org.openide.util.NbBundle.Messages;

/** Says in its place what can't be done while a feature is switched off. Event thread. */
@Preview(since = "1.0")
public final class Needs {
    private Needs() {}

    /** What is said where something needs a service; empty while it is there. */
    public static Optional<String> words(Desk desk, Class<?> service) {
        return desk.workshop().find(service).isPresent() ? Optional.empty() : Optional.of(words(service));
    }

    /** A button that does nothing and says why, while a service it needs is not there. */
    public static <B extends AbstractButton> B of(Desk desk, Class<?> service, B button) {
        words(desk, service).ifPresent(words -> {
            button.setEnabled(false);
            if (button instanceof JMenuItem) {
                button.setText(Bundle.Needs_item(button.getText(), words)); // a tip in a menu is seldom seen
            } else {
                button.setToolTipText(words);
            }
            button.getAccessibleContext().setAccessibleDescription(words);
        });
        return button;
    }

    @Messages({
        "Needs.stash=Needs kits and pieces, which are switched off.",
        "Needs.finishes=Needs finishes, which are switched off.",
        "Needs.storage=Needs the cabinet, which is switched off.",
        "Needs.activeWork=Needs sittings, which are switched off.",
        "Needs.framing=Needs the framing bench, which is switched off.",
        "Needs.legends=Needs the reading of legend files, which is switched off.",
        "# {0} - what can't be done",
        "# {1} - what it needs",
        "Needs.item={0}. {1}",
        "Needs.other=Needs a part that is switched off."
    })
    private static String words(Class<?> service) {
        if (service == Stash.class) {
            return Bundle.Needs_stash();
        }
        if (service == Finishes.class) {
            return Bundle.Needs_finishes();
        }
        if (service == Storage.class) {
            return Bundle.Needs_storage();
        }
        if (service == ActiveWork.class) {
            return Bundle.Needs_activeWork();
        }
        if (service == Framing.class) {
            return Bundle.Needs_framing();
        }
        return service == LegendReader.class ? Bundle.Needs_legends() : Bundle.Needs_other();
    }
}
