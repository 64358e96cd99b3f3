package org.glintery.testkit.contract;

import org.glintery.api.Result;
import org.glintery.api.workshop.ChangeSet;
import org.glintery.api.workshop.View;
import org.glintery.api.workshop.Workshop;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Nested;

/** What every {@link Workshop} keeps: extend it, say how to make an empty one, and its parts run against that. */
public abstract class WorkshopContract {
    private Workshop workshop;

    /** A new and empty workshop. The contract closes it. */
    protected abstract Workshop create();

    @BeforeEach
    final void open() {
        workshop = create();
    }

    @AfterEach
    final void close() {
        workshop.close();
    }

    @Nested
    class Documents extends DocumentTests {
        @Override
        Workshop workshop() {
            return workshop;
        }
    }

    @Nested
    class Undo extends UndoTests {
        @Override
        Workshop workshop() {
            return workshop;
        }
    }

    @Nested
    class Ledger extends LedgerTests {
        @Override
        Workshop workshop() {
            return workshop;
        }
    }

    @Nested
    class Handle extends HandleTests {
        @Override
        Workshop workshop() {
            return workshop;
        }
    }

    /** What the parts share. */
    abstract static class Part {
        abstract Workshop workshop();

        final View view() {
            return workshop().view();
        }

        /** {@code ok}, or the code of the refusal; what was refused has changed nothing. */
        final String apply(ChangeSet.Builder change) {
            return apply(change.build());
        }

        final String apply(ChangeSet change) {
            String before = view().contentDigest();
            String code = code(workshop().apply(change));
            if (!code.equals("ok") && !view().contentDigest().equals(before)) {
                throw new AssertionError("refused with " + code + " and changed something all the same");
            }
            return code;
        }

        static String code(Result<?> result) {
            return result instanceof Result.Refused<?> refused
                    ? refused.refusal().code()
                    : "ok";
        }
    }
}
