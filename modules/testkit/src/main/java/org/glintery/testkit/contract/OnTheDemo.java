package org.glintery.testkit.contract;

import java.time.Clock;
import org.glintery.api.workshop.Workshop;
import org.glintery.testkit.FakeDesk;
import org.glintery.testkit.MemoryWorkshop;
import org.glintery.testkit.guard.Guarded;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.TestInstance;

/** What the contracts of extension points share: a workshop for all tests of a class, filled with the demo. */
@Guarded
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
public abstract class OnTheDemo {
    private static final long SEED = 1;
    private Workshop workshop;

    /** The workshop to test on; filled with the demo when it is not said otherwise. Closed at the end. */
    protected Workshop create() {
        return MemoryWorkshop.withDemo(SEED);
    }

    protected final Workshop workshop() {
        return workshop;
    }

    protected final FakeDesk desk() {
        return new FakeDesk(workshop, Clock.systemDefaultZone());
    }

    @BeforeAll
    final void openWorkshop() {
        workshop = create();
    }

    @AfterAll
    final void closeWorkshop() {
        workshop.close();
    }
}
