package org.glintery.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.glintery.api.Refusal;
import org.glintery.api.Result;
import org.glintery.api.workshop.Workshop;
import org.glintery.api.workshop.Workshops;
import org.openide.util.Lookup;

/** Real workshops in a folder of a test. */
public final class TestWorkshops {
    private TestWorkshops() {}

    public static Workshop create(Path folder) {
        return Lookup.getDefault().lookup(Workshops.class).create(folder).orThrow();
    }

    public static Refusal refusal(Result<?> result) {
        assertThat(result).isInstanceOf(Result.Refused.class);
        return ((Result.Refused<?>) result).refusal();
    }
}
