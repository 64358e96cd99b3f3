package org.glintery.testkit;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.glintery.api.Refusal;
import org.glintery.api.Result;
import org.glintery.api.workshop.Applied;
import org.glintery.api.workshop.ChangeSet;
import org.glintery.api.workshop.View;
import org.glintery.api.workshop.Workshop;
import org.glintery.api.workshop.Workshops;
import org.openide.util.Lookup;

/** A real workshop in a folder of a test. Each feature's tests extend it by the steps that they share. */
public abstract class ShopInFolder implements AutoCloseable {
    private final Workshop workshop;

    /** Takes over a workshop, and closes it. */
    protected ShopInFolder(Workshop workshop) {
        this.workshop = workshop;
    }

    /** @param folder of the test, in which the workshop is made */
    protected static Workshop made(Path folder) {
        return workshops().create(folder.resolve("workshop")).orThrow();
    }

    protected static Workshops workshops() {
        return Lookup.getDefault().lookup(Workshops.class);
    }

    public final Workshop workshop() {
        return workshop;
    }

    public final View view() {
        return workshop.view();
    }

    /** Applies a change and gives its warnings. */
    public final List<String> apply(Result<ChangeSet> change) {
        Result<Applied> applied = change.then(workshop::apply);
        applied.orThrow();
        return ((Result.Ok<Applied>) applied).warnings();
    }

    /** Why something was refused, which it must be. */
    public static Refusal refusal(Result<?> result) {
        assertThat(result).isInstanceOf(Result.Refused.class);
        return ((Result.Refused<?>) result).refusal();
    }

    @Override
    public final void close() {
        workshop.close();
    }
}
