package org.glintery.records;

import java.util.Collections;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.Map;
import org.glintery.api.GlinteryException;
import org.glintery.api.ledger.Amount;
import org.glintery.api.workshop.HistoryLine;

/**
 * The numbers that stand for constants on disk. They never change, however a constant is called or where it stands among its
 * kind; a new constant takes a new number. Immutable; any thread.
 */
final class DiskCodes<E extends Enum<E>> {
    static final DiskCodes<Amount.Basis> BASES = new DiskCodes<>(
            Amount.Basis.class,
            Map.of(
                    Amount.Basis.COUNTED, 0,
                    Amount.Basis.WEIGHED, 1,
                    Amount.Basis.BY_BAG, 2,
                    Amount.Basis.ROUGH, 3,
                    Amount.Basis.UNKNOWN, 4));

    static final DiskCodes<HistoryLine.Kind> CHANGES = new DiskCodes<>(
            HistoryLine.Kind.class,
            Map.of(HistoryLine.Kind.DONE, 0, HistoryLine.Kind.UNDO, 1, HistoryLine.Kind.REDO, 2));

    static final DiskCodes<MovementRow.Kind> MOVEMENTS = new DiskCodes<>(
            MovementRow.Kind.class,
            Map.of(MovementRow.Kind.MOVEMENT, 0, MovementRow.Kind.REVERSAL, 1, MovementRow.Kind.STOCKTAKE, 2));

    private final Class<E> kind;
    private final Map<E, Integer> codes;
    private final Map<Integer, E> constants = new HashMap<>();

    private DiskCodes(Class<E> kind, Map<E, Integer> codes) {
        this.kind = kind;
        this.codes = new EnumMap<>(codes);
        codes.forEach((constant, code) -> constants.put(code, constant));
    }

    int of(E constant) {
        Integer code = codes.get(constant);
        if (code == null) {
            throw new IllegalStateException(constant + " of " + kind.getName() + " has no number on disk yet");
        }
        return code;
    }

    /** @throws GlinteryException when no constant has the number: the file is damaged or newer than this program */
    E constant(int code) {
        E constant = constants.get(code);
        if (constant == null) {
            throw new GlinteryException("a " + kind.getSimpleName() + " on disk has the unknown number " + code);
        }
        return constant;
    }

    /** Every constant that has a number. */
    Map<E, Integer> all() {
        return Collections.unmodifiableMap(codes);
    }
}
