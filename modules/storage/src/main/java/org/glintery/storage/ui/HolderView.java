package org.glintery.storage.ui;

import java.awt.BasicStroke;
import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.Point;
import java.awt.Rectangle;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.util.Optional;
import java.util.Set;
import javax.accessibility.AccessibleRole;
import javax.swing.TransferHandler;
import org.glintery.api.ledger.Spot;
import org.glintery.workbench.parts.DrawnComponent;
import org.glintery.workbench.parts.Space;
import org.glintery.workbench.parts.Tone;

/** A holder drawn as it is, pocket by pocket. Arrow keys walk, drags move. Event thread. */
final class HolderView extends DrawnComponent implements SpotPlace {

    private static final long serialVersionUID = 1L;
    private static final int CELL_WIDTH_PX = 54;
    private static final int CELL_HEIGHT_PX = 50;
    private static final int LEAST_CELL_PX = 26;
    private static final int GAP_PX = 4;

    private final transient SpotMenu menu;
    private transient CabinetSheet.HolderDrawing holder;
    private transient Set<Spot> lit = Set.of();
    private boolean searching;
    private int cursor;

    HolderView(CabinetSheet.HolderDrawing holder, SpotTransfer transfer, SpotMenu menu) {
        super(AccessibleRole.PANEL);
        this.menu = menu;
        setFocusable(true);
        setToolTipText("");
        show(holder);
        transfer.serve(this);
        walk("LEFT", -1, 0);
        walk("RIGHT", 1, 0);
        walk("UP", 0, -1);
        walk("DOWN", 0, 1);
        onKey("CONTEXT_MENU", () -> popUp(middle(cursor)));
        onKey("shift F10", () -> popUp(middle(cursor)));
        onKey("ENTER", () -> popUp(middle(cursor)));
        Mouse mouse = new Mouse();
        addMouseListener(mouse);
        addMouseMotionListener(mouse);
        repaintOnFocus();
    }

    void show(CabinetSheet.HolderDrawing newHolder) {
        holder = newHolder;
        cursor = Math.min(cursor, Math.max(0, newHolder.pockets().size() - 1));
        describeCursor();
        revalidate();
        repaint();
    }

    /** @param newSearching whether pockets that are not lit step back */
    void light(Set<Spot> spots, boolean newSearching) {
        lit = spots;
        searching = newSearching;
        repaint();
    }

    @Override
    public Optional<Spot> picked() {
        return pocket(cursor).filter(pocket -> !pocket.contents().isEmpty()).map(CabinetSheet.PocketDrawing::spot);
    }

    @Override
    public Optional<Spot> cursor() {
        return pocket(cursor).map(CabinetSheet.PocketDrawing::spot);
    }

    @Override
    public Optional<Spot> at(Point point) {
        return pocket(indexAt(point)).map(CabinetSheet.PocketDrawing::spot);
    }

    @Override
    public Dimension getPreferredSize() {
        return new Dimension(
                holder.columns() * (Space.px(CELL_WIDTH_PX) + Space.px(GAP_PX)) + Space.px(GAP_PX),
                drawnRows() * stepY() + Space.px(GAP_PX));
    }

    @Override
    public Dimension getMinimumSize() {
        return new Dimension(
                holder.columns() * (Space.px(LEAST_CELL_PX) + Space.px(GAP_PX)), getPreferredSize().height);
    }

    @Override
    public String getToolTipText(MouseEvent event) {
        return pocket(indexAt(event.getPoint())).map(CabinetWords::pocket).orElse(null);
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        Graphics2D g = (Graphics2D) graphics.create();
        g.setFont(getFont());
        Rectangle clip = g.getClipBounds();
        for (int i = 0; i < holder.pockets().size(); i++) {
            Rectangle box = box(i);
            if (clip == null || clip.intersects(box)) {
                PocketPainter.paint(
                        g, holder.pockets().get(i), box, mark(holder.pockets().get(i)));
            }
        }
        if (isFocusOwner() && !holder.pockets().isEmpty()) {
            Rectangle box = box(cursor);
            g.setColor(Tone.ACCENT.colour());
            g.setStroke(new BasicStroke(
                    Space.px(2), BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 1, new float[] {4, 3}, 0));
            g.drawRect(box.x + 1, box.y + 1, box.width - 2, box.height - 2);
        }
        g.dispose();
    }

    private PocketPainter.Mark mark(CabinetSheet.PocketDrawing pocket) {
        if (!searching) {
            return PocketPainter.Mark.NONE;
        }
        return lit.contains(pocket.spot()) ? PocketPainter.Mark.LIT : PocketPainter.Mark.DIMMED;
    }

    private Optional<CabinetSheet.PocketDrawing> pocket(int index) {
        return index >= 0 && index < holder.pockets().size()
                ? Optional.of(holder.pockets().get(index))
                : Optional.empty();
    }

    private int indexAt(Point point) {
        int column = (point.x - Space.px(GAP_PX)) / stepX();
        int row = (point.y - Space.px(GAP_PX)) / stepY();
        return point.x < 0 || point.y < 0 || column >= holder.columns() ? -1 : row * holder.columns() + column;
    }

    private Rectangle box(int index) {
        return new Rectangle(
                Space.px(GAP_PX) + index % holder.columns() * stepX(),
                Space.px(GAP_PX) + index / holder.columns() * stepY(),
                stepX() - Space.px(GAP_PX),
                Space.px(CELL_HEIGHT_PX));
    }

    private int drawnRows() {
        return (holder.pockets().size() + holder.columns() - 1) / holder.columns();
    }

    /** Pockets become narrower where there is too little room for all of them. */
    private int stepX() {
        int usual = Space.px(CELL_WIDTH_PX) + Space.px(GAP_PX);
        int room = getWidth() <= 0 ? usual : (getWidth() - Space.px(GAP_PX)) / holder.columns();
        return Math.max(Space.px(LEAST_CELL_PX) + Space.px(GAP_PX), Math.min(usual, room));
    }

    private static int stepY() {
        return Space.px(CELL_HEIGHT_PX) + Space.px(GAP_PX);
    }

    private void walk(String stroke, int right, int down) {
        onKey(stroke, () -> select(cursor + right + down * holder.columns()));
    }

    private void popUp(Point at) {
        pocket(cursor).ifPresent(pocket -> menu.show(this, at, pocket));
    }

    private Point middle(int index) {
        Rectangle box = box(index);
        return new Point((int) box.getCenterX(), (int) box.getCenterY());
    }

    private void select(int index) {
        if (pocket(index).isPresent()) {
            cursor = index;
            describeCursor();
            scrollRectToVisible(box(index));
            repaint();
        }
    }

    private void describeCursor() {
        getAccessibleContext().setAccessibleName(holder.name());
        pocket(cursor).ifPresent(p -> getAccessibleContext().setAccessibleDescription(CabinetWords.pocket(p)));
    }

    /** Selects what is pressed and drags what lies in it. */
    private final class Mouse extends MouseAdapter {

        @Override
        public void mousePressed(MouseEvent e) {
            requestFocusInWindow();
            select(indexAt(e.getPoint()));
            trigger(e);
        }

        @Override
        public void mouseReleased(MouseEvent e) {
            trigger(e);
        }

        private void trigger(MouseEvent e) {
            if (e.isPopupTrigger() && indexAt(e.getPoint()) == cursor) {
                popUp(e.getPoint());
            }
        }

        @Override
        public void mouseDragged(MouseEvent e) {
            if (picked().isPresent()) {
                getTransferHandler().exportAsDrag(HolderView.this, e, TransferHandler.MOVE);
            }
        }
    }
}
