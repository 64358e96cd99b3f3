package org.glintery.testkit.contract;

import static org.assertj.core.api.Assertions.assertThat;

import org.glintery.api.workshop.ServiceFactory;
import org.glintery.api.workshop.Workshop;
import org.glintery.testkit.MemoryWorkshop;
import org.glintery.testkit.guard.Guarded;
import org.junit.jupiter.api.Test;
import org.openide.util.Lookup;

/** What every {@link ServiceFactory} keeps. */
@Guarded
public abstract class ServiceFactoryContract {

    protected abstract ServiceFactory factory();

    @Test
    void makesItsService_forEachWorkshop() {
        try (Workshop one = new MemoryWorkshop();
                Workshop other = new MemoryWorkshop()) {
            Object made = factory().create(one);
            assertThat(made).isInstanceOf(factory().service());
            assertThat(factory().create(other)).isNotSameAs(made);
        }
    }

    @Test
    void isFoundByItsAnnotation() {
        assertThat(Lookup.getDefault().lookupAll(ServiceFactory.class))
                .anyMatch(found -> found.getClass() == factory().getClass());
        try (Workshop workshop = new MemoryWorkshop()) {
            assertThat(workshop.find(factory().service())).isPresent();
        }
    }
}
