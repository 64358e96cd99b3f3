package org.glintery.records;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import org.glintery.api.GlinteryException;
import org.glintery.api.workshop.ServiceFactory;
import org.glintery.api.workshop.Workshop;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.openide.util.lookup.Lookups;

class ServiceShelfTest {
    @TempDir
    Path temp;

    /** A service that knows its workshop. */
    record Tide(Workshop workshop) {}

    /** Brings it. */
    static class TideFactory implements ServiceFactory<Tide> {
        @Override
        public Class<Tide> service() {
            return Tide.class;
        }

        @Override
        public Tide create(Workshop workshop) {
            return new Tide(workshop);
        }
    }

    /** Somebody else's, for the same. */
    static final class SecondFactory extends TideFactory {}

    @Test
    void makesAServiceOnce_forTheWorkshopThatIsAsked() {
        Lookups.executeWith(Lookups.fixed(new TideFactory()), () -> {
            try (Workshop workshop = new H2Workshops().create(temp.resolve("w")).orThrow()) {
                Tide tide = workshop.find(Tide.class).orElseThrow();
                assertThat(tide.workshop()).isSameAs(workshop);
                assertThat(workshop.find(Tide.class)).containsSame(tide);
                assertThat(workshop.find(ServiceShelfTest.class)).isEmpty();
            }
        });
    }

    @Test
    void namesBoth_whenTwoFactoriesBringOneService() {
        Lookups.executeWith(Lookups.fixed(new TideFactory(), new SecondFactory()), () -> {
            try (Workshop workshop = new H2Workshops().create(temp.resolve("w")).orThrow()) {
                assertThatThrownBy(() -> workshop.find(Tide.class))
                        .isInstanceOf(GlinteryException.class)
                        .hasMessageContaining(Tide.class.getName())
                        .hasMessageContaining(TideFactory.class.getName())
                        .hasMessageContaining(SecondFactory.class.getName());
            }
        });
    }
}
