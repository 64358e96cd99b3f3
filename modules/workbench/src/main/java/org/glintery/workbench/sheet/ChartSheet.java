package org.glintery.workbench.sheet;

import java.awt.BasicStroke;
import java.awt.Cursor;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;
import java.awt.image.BufferedImage;
import java.awt.image.DataBufferInt;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.Executor;
import javax.accessibility.AccessibleRole;
import javax.swing.SwingUtilities;
import org.glintery.api.Preview;
import org.glintery.workbench.parts.DrawnComponent;
import org.glintery.workbench.parts.Tone;
import org.openide.util.NbBundle.Messages;

/**
 * A chart to look at, move, zoom, select and paint on, from the whole picture down to single drills. It changes no
 * chart: it tells its listener what somebody did, and shows what it is given next. Event thread.
 */
@Preview(since = "1.0")
@Messages({
    "ChartSheet.name=Chart",
    "ChartSheet.help=Arrow keys move from cell to cell, the space bar uses the tool, plus and minus zoom, Home shows all.",
    "# {0} - column",
    "# {1} - row",
    "# {2} - the drill",
    "ChartSheet.cell=Column {0}, row {1}: {2}",
    "ChartSheet.bare=no drill"
})
public final class ChartSheet extends DrawnComponent {
    private static final long serialVersionUID = 1L;
    private static final int RULED_EVERY = 10;
    private static final double RULED_FROM_PX = 5;

    private final transient SheetPainter painter = new SheetPainter();
    private final transient Executor background;
    private final transient SheetListener listener;
    private transient BufferedImage frame;
    private transient SheetScene scene;
    private transient List<LineLook> looks = List.of();
    private transient SheetView view = new SheetView(1, 0, 0);
    private transient BitSet laid = new BitSet();
    private transient BitSet selected = new BitSet();
    private transient Path2D drawing;
    private transient BitSet stroke = new BitSet();
    private SheetTool tool = SheetTool.MOVE;
    private int cursorColumn;
    private int cursorRow;
    private int showing;

    /** @param background where drills are drawn beforehand */
    public ChartSheet(Executor background, SheetListener listener) {
        super(AccessibleRole.CANVAS);
        this.background = background;
        this.listener = listener;
        SheetGestures gestures = new SheetGestures(this);
        addMouseListener(gestures);
        addMouseMotionListener(gestures);
        addMouseWheelListener(gestures);
        SheetKeys.install(this);
        setFocusable(true);
        setOpaque(true);
        getAccessibleContext().setAccessibleName(Bundle.ChartSheet_name());
        getAccessibleContext().setAccessibleDescription(Bundle.ChartSheet_help());
    }

    /** Shows a chart; it appears once its drills are drawn. The view stays when the size is that of the chart before. */
    public CompletableFuture<Void> show(SheetCells cells, List<LineLook> newLooks, SheetStyle style, BitSet newLaid) {
        int turn = ++showing;
        return CompletableFuture.supplyAsync(() -> SheetScene.of(cells, newLooks, style), background)
                .thenAcceptAsync(
                        made -> {
                            if (turn == showing) {
                                arrive(made, newLooks, newLaid);
                            }
                        },
                        SwingUtilities::invokeLater);
    }

    private void arrive(SheetScene made, List<LineLook> newLooks, BitSet newLaid) {
        boolean sameSize = scene != null
                && scene.cells().columns() == made.cells().columns()
                && scene.cells().rows() == made.cells().rows();
        scene = made;
        looks = List.copyOf(newLooks);
        laid = (BitSet) newLaid.clone();
        if (sameSize) {
            repaint();
        } else {
            selected = new BitSet();
            fit();
        }
    }

    /** Shows other lines in some cells of the chart that is shown, at once. */
    public void change(SheetCells cells, BitSet which) {
        scene = scene.changed(cells, which);
        repaint();
    }

    /** Shows which cells are laid. */
    public void setLaid(BitSet cells) {
        laid = (BitSet) cells.clone();
        repaint();
    }

    public void setTool(SheetTool newTool) {
        tool = newTool;
        setCursor(Cursor.getPredefinedCursor(tool == SheetTool.MOVE ? Cursor.MOVE_CURSOR : Cursor.CROSSHAIR_CURSOR));
    }

    public SheetTool tool() {
        return tool;
    }

    /** Whether a chart is there to be seen. */
    public boolean isReady() {
        return scene != null;
    }

    public SheetView view() {
        return view;
    }

    /** Moves or zooms. */
    public void show(SheetView newView) {
        view = scene == null ? newView : newView.kept(scene.cells(), getWidth(), getHeight());
        repaint();
    }

    /** Shows the whole chart. */
    public void fit() {
        if (scene != null && getWidth() > 0) {
            view = SheetView.fitting(scene.cells(), getWidth(), getHeight());
            repaint();
        }
    }

    /** The cells selected now; a copy. */
    public BitSet selection() {
        return (BitSet) selected.clone();
    }

    /** Selects cells. @param added to those selected before */
    public void select(BitSet cells, boolean added) {
        BitSet next = added ? selection() : new BitSet();
        next.or(cells);
        selected = next;
        repaint();
        listener.selected(selection());
    }

    @Override
    public void setBounds(int x, int y, int width, int height) {
        boolean first = getWidth() == 0;
        super.setBounds(x, y, width, height);
        if (first) {
            fit();
        }
    }

    SheetCells cells() {
        return scene.cells();
    }

    double columnsAt(double xPx) {
        return view.left() + xPx / view.cellPx();
    }

    double rowsAt(double yPx) {
        return view.top() + yPx / view.cellPx();
    }

    void drawing(Path2D path, BitSet cells) {
        drawing = path;
        stroke = cells;
        repaint();
    }

    void stroked(BitSet drawn) {
        if (!drawn.isEmpty()) {
            listener.stroked(tool, drawn);
        }
    }

    void moveCursor(int columns, int rows) {
        cursorColumn = Math.max(0, Math.min(cells().columns() - 1, cursorColumn + columns));
        cursorRow = Math.max(0, Math.min(cells().rows() - 1, cursorRow + rows));
        int line = cells().line(cursorRow * cells().columns() + cursorColumn);
        String drill = line < 0
                ? Bundle.ChartSheet_bare()
                : looks.get(line).symbol() + " " + looks.get(line).drill().words();
        getAccessibleContext()
                .setAccessibleDescription(Bundle.ChartSheet_cell(cursorColumn + 1, cursorRow + 1, drill.strip()));
        repaint();
    }

    void useTool(boolean added) {
        BitSet cell = CellSets.box(cells(), cursorColumn, cursorRow, cursorColumn, cursorRow);
        int index = cell.nextSetBit(0);
        switch (tool) {
            case BRUSH, LAY -> stroked(cell);
            case COLOUR -> select(CellSets.colour(cells(), cells().line(index)), added);
            case PATCH -> select(CellSets.patch(cells(), index), added);
            default -> select(cell, added);
        }
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        Graphics2D g = (Graphics2D) graphics.create();
        try {
            if (scene == null) {
                g.setColor(Tone.PAPER.colour());
                g.fillRect(0, 0, getWidth(), getHeight());
                return;
            }
            drawCells(g);
            drawOver(g);
        } finally {
            g.dispose();
        }
    }

    private void drawCells(Graphics2D g) {
        // at 200 % a pixel of ours is four of the screen's: draw in the screen's
        double scale = g.getTransform().getScaleX();
        int width = (int) Math.ceil(getWidth() * scale);
        int height = (int) Math.ceil(getHeight() * scale);
        if (frame == null || frame.getWidth() != width || frame.getHeight() != height) {
            frame = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        }
        int[] pixels = ((DataBufferInt) frame.getRaster().getDataBuffer()).getData();
        BitSet tinted = selected;
        if (!stroke.isEmpty()) {
            tinted = selection();
            tinted.or(stroke);
        }
        SheetPainter.Overlay over = new SheetPainter.Overlay(laid, tinted, Tone.ACCENT.colour(), Tone.PAPER.colour());
        painter.paint(pixels, width, height, scene, view, scale, over);
        g.drawImage(frame, AffineTransform.getScaleInstance(1 / scale, 1 / scale), null);
    }

    private void drawOver(Graphics2D g) {
        if (view.cellPx() >= RULED_FROM_PX) {
            rule(g);
        }
        g.setColor(Tone.ACCENT.colour());
        g.setStroke(new BasicStroke(2));
        Optional.ofNullable(drawing).ifPresent(path -> {
            AffineTransform place = AffineTransform.getScaleInstance(view.cellPx(), view.cellPx());
            place.translate(-view.left(), -view.top());
            g.draw(place.createTransformedShape(path));
        });
        if (isFocusOwner() && view.cellPx() >= RULED_FROM_PX) {
            g.draw(view.boundsOf(cursorColumn, cursorRow, 1, 1));
        }
    }

    private void rule(Graphics2D g) {
        g.setColor(Tone.INK.colour(0.35));
        g.setStroke(new BasicStroke(1));
        SheetCells cells = scene.cells();
        for (int column = 0; column <= cells.columns(); column += RULED_EVERY) {
            g.draw(view.boundsOf(column, 0, 0, cells.rows()));
        }
        for (int row = 0; row <= cells.rows(); row += RULED_EVERY) {
            g.draw(view.boundsOf(0, row, cells.columns(), 0));
        }
    }
}
