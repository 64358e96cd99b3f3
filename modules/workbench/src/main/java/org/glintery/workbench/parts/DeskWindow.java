package org.glintery.workbench.parts;

import java.awt.BorderLayout;
import java.awt.Dimension;
import java.util.Optional;
import javax.swing.JButton;
import javax.swing.JComponent;
import org.glintery.api.Stable;
import org.glintery.api.workshop.Workshop;
import org.glintery.workbench.spi.Desk;
import org.glintery.workbench.spi.ScreenPart;
import org.openide.util.NbBundle.Messages;
import org.openide.windows.TopComponent;

/**
 * A window of the application that works at the open workshop: it shows one part, fresh after every change, and an
 * empty note while no workshop is open. Event thread.
 */
@Stable
public abstract class DeskWindow extends TopComponent {
    private static final long serialVersionUID = 1L;
    private static final int TAB_ICON_PX = 16;
    private static final int LEAST_PX = 160;
    private transient Workshop.Registration desks;
    private transient Optional<Desk> shown;
    private final transient Pictogram icon;

    /** @param name on the tab, such as "Cabinet" */
    protected DeskWindow(String name, Pictogram icon) {
        this.icon = icon;
        setLayout(new BorderLayout());
        setName(name);
        setDisplayName(name);
        setToolTipText(name);
        setIcon(icon.image(TAB_ICON_PX));
        getAccessibleContext().setAccessibleName(name);
    }

    /** What the window shows at this desk. Called on the event thread, once for each workshop that is opened. */
    protected abstract ScreenPart<?> create(Desk desk);

    /** Whether the window scrolls as a whole; parts with lists and drawings scroll by themselves. */
    protected boolean scrolls() {
        return false;
    }

    @Override
    protected void componentOpened() {
        OpenDesk open = OpenDesk.get();
        desks = open.listen(this::showAt);
        showAt(open.current());
    }

    @Override
    protected void componentClosed() {
        if (desks != null) {
            desks.close();
            desks = null;
        }
        shown = null;
        removeAll();
    }

    /** What is in it scrolls or wraps, so the window itself may become narrow. */
    @Override
    public Dimension getMinimumSize() {
        return new Dimension(Space.px(LEAST_PX), Space.px(LEAST_PX));
    }

    /** Also called when light and dark are switched: the icon on the tab is an image and does not follow by itself. */
    @Override
    public void updateUI() {
        super.updateUI();
        if (icon != null) {
            setIcon(icon.image(TAB_ICON_PX));
        }
    }

    @Override
    public int getPersistenceType() {
        return PERSISTENCE_ONLY_OPENED;
    }

    @Override
    protected String preferredID() {
        return getClass().getSimpleName();
    }

    private void showAt(Optional<Desk> desk) {
        if (desk.equals(shown)) {
            return;
        }
        shown = desk;
        removeAll();
        JComponent contents = desk.<JComponent>map(this::contents).orElseGet(this::noWorkshop);
        add(contents);
        revalidate();
        repaint();
    }

    private JComponent contents(Desk desk) {
        PartPane pane = new PartPane(getName(), desk, this, () -> create(desk));
        return scrolls() ? new PageScroll(pane) : pane;
    }

    @Messages({
        "DeskWindow.heading=No workshop is open",
        "DeskWindow.text=Open the folder of a workshop, or set up a new one.",
        "DeskWindow.open=Open a workshop",
        "DeskWindow.new=New workshop"
    })
    private JComponent noWorkshop() {
        return new EmptyNote(
                Pictogram.WORKSHOP,
                Bundle.DeskWindow_heading(),
                Bundle.DeskWindow_text(),
                way(Bundle.DeskWindow_open(), "OpenWorkshopAction"),
                way(Bundle.DeskWindow_new(), "NewWorkshopAction"));
    }

    private static JButton way(String text, String action) {
        return Buttons.plain(text, () -> MenuActions.run("Workshop", action));
    }

    @Override
    public boolean requestFocusInWindow() {
        return getComponentCount() > 0 && getComponent(0).requestFocusInWindow() || super.requestFocusInWindow();
    }
}
