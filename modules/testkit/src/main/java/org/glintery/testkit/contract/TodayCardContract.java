package org.glintery.testkit.contract;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Clock;
import org.glintery.api.workshop.Workshop;
import org.glintery.testkit.EventThread;
import org.glintery.testkit.FakeDesk;
import org.glintery.testkit.MemoryWorkshop;
import org.glintery.workbench.spi.TodayCard;
import org.junit.jupiter.api.Test;

/** What every {@link TodayCard} keeps. Needs the demo on the class path, or a workshop that it has something to say of. */
public abstract class TodayCardContract extends OnTheDemo {
    private static final int LONGEST_TITLE = 40;

    protected abstract TodayCard card();

    @Test
    void hasAShortTitle_andKeepsItsPlace() {
        TodayCard card = card();
        assertThat(card.title()).isNotBlank().hasSizeLessThanOrEqualTo(LONGEST_TITLE);
        assertThat(card.title()).isEqualTo(card().title());
        assertThat(card.position()).isEqualTo(card().position());
    }

    @Test
    void showsWhatItHasToSay() {
        TodayCard card = card();
        assertThat(EventThread.call(() -> card.offered(workshop().view())))
                .as("it is offered")
                .isTrue();
        FakeDesk desk = desk();
        PartShowing.check(desk, () -> card.create(desk));
    }

    @Test
    void holds_inAnEmptyWorkshop() {
        TodayCard card = card();
        try (Workshop empty = new MemoryWorkshop()) {
            EventThread.run(() -> card.offered(empty.view()));
            FakeDesk desk = new FakeDesk(empty, Clock.systemDefaultZone());
            PartShowing.check(desk, () -> card.create(desk));
        }
    }
}
