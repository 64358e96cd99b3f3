package org.glintery.workbench.sheet;

import java.awt.Point;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.awt.event.MouseWheelEvent;
import java.awt.geom.Path2D;
import java.util.BitSet;
import javax.swing.SwingUtilities;

/** Turns the mouse into moves, zooms, selections and strokes. Event thread. */
final class SheetGestures extends MouseAdapter {
    private static final double ZOOM_A_NOTCH = 1.25;

    private final ChartSheet sheet;
    private Point before;
    private Point start;
    private Path2D path;
    private BitSet stroke;
    private boolean moving;

    SheetGestures(ChartSheet sheet) {
        this.sheet = sheet;
    }

    @Override
    public void mouseWheelMoved(MouseWheelEvent e) {
        sheet.show(sheet.view().zoomedAt(e.getX(), e.getY(), Math.pow(ZOOM_A_NOTCH, -e.getPreciseWheelRotation())));
    }

    @Override
    public void mousePressed(MouseEvent e) {
        sheet.requestFocusInWindow();
        before = e.getPoint();
        start = e.getPoint();
        moving = SwingUtilities.isMiddleMouseButton(e) || sheet.tool() == SheetTool.MOVE;
        if (moving || !sheet.isReady()) {
            return;
        }
        path = new Path2D.Double();
        path.moveTo(sheet.columnsAt(e.getX()), sheet.rowsAt(e.getY()));
        stroke = sheet.tool().strokes() ? strokeTo(e.getPoint()) : new BitSet();
        sheet.drawing(path, stroke);
    }

    @Override
    public void mouseDragged(MouseEvent e) {
        if (before == null || !sheet.isReady()) {
            return;
        }
        if (moving) {
            sheet.show(sheet.view().dragged(e.getX() - before.x, e.getY() - before.y));
        } else if (sheet.tool().strokes()) {
            stroke.or(strokeTo(e.getPoint()));
        } else if (sheet.tool() == SheetTool.LASSO) {
            path.lineTo(sheet.columnsAt(e.getX()), sheet.rowsAt(e.getY()));
        } else if (sheet.tool() == SheetTool.BOX) {
            path = boxTo(e.getPoint());
        }
        before = e.getPoint();
        if (!moving) {
            sheet.drawing(path, stroke);
        }
    }

    @Override
    public void mouseReleased(MouseEvent e) {
        if (before == null || moving || !sheet.isReady()) {
            before = null;
            return;
        }
        before = null;
        BitSet drawn = stroke;
        sheet.drawing(null, new BitSet());
        if (sheet.tool().strokes()) {
            sheet.stroked(drawn);
        } else {
            sheet.select(picked(e.getPoint()), e.isShiftDown());
        }
    }

    private BitSet picked(Point end) {
        SheetCells cells = sheet.cells();
        SheetView view = sheet.view();
        int column = view.columnAt(end.x);
        int row = view.rowAt(end.y);
        boolean on = cells.holds(column, row);
        int cell = row * cells.columns() + column;
        return switch (sheet.tool()) {
            case COLOUR -> on ? CellSets.colour(cells, cells.line(cell)) : new BitSet();
            case PATCH -> on ? CellSets.patch(cells, cell) : new BitSet();
            case LASSO -> {
                path.closePath();
                yield CellSets.lasso(cells, path);
            }
            default ->
                on || cells.holds(view.columnAt(start.x), view.rowAt(start.y))
                        ? CellSets.box(cells, view.columnAt(start.x), view.rowAt(start.y), column, row)
                        : new BitSet();
        };
    }

    private BitSet strokeTo(Point end) {
        SheetView view = sheet.view();
        return CellSets.stroke(
                sheet.cells(), view.columnAt(before.x), view.rowAt(before.y), view.columnAt(end.x), view.rowAt(end.y));
    }

    private Path2D boxTo(Point end) {
        Path2D box = new Path2D.Double();
        box.moveTo(sheet.columnsAt(start.x), sheet.rowsAt(start.y));
        box.lineTo(sheet.columnsAt(end.x), sheet.rowsAt(start.y));
        box.lineTo(sheet.columnsAt(end.x), sheet.rowsAt(end.y));
        box.lineTo(sheet.columnsAt(start.x), sheet.rowsAt(end.y));
        box.closePath();
        return box;
    }
}
