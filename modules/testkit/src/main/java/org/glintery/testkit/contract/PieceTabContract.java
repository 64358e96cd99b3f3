package org.glintery.testkit.contract;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.UUID;
import org.glintery.api.stash.Piece;
import org.glintery.api.workshop.Stored;
import org.glintery.testkit.EventThread;
import org.glintery.testkit.FakeDesk;
import org.glintery.workbench.spi.PieceTab;
import org.junit.jupiter.api.Test;

/** What every {@link PieceTab} keeps. Needs the demo on the class path, or a workshop with pieces. */
public abstract class PieceTabContract extends OnTheDemo {
    private static final UUID NOBODY = new UUID(404, 404);
    private static final int LONGEST_TITLE = 24;

    protected abstract PieceTab tab();

    private List<UUID> offered() {
        PieceTab tab = tab();
        return workshop().view().all(Piece.TYPE).stream()
                .map(Stored::id)
                .filter(piece -> EventThread.call(() -> tab.offered(workshop().view(), piece)))
                .toList();
    }

    @Test
    void hasAShortTitle_andKeepsItsPlace() {
        PieceTab tab = tab();
        assertThat(tab.title()).isNotBlank().hasSizeLessThanOrEqualTo(LONGEST_TITLE);
        assertThat(tab.title()).isEqualTo(tab().title());
        assertThat(tab.position()).isEqualTo(tab().position());
    }

    @Test
    void showsEveryPieceThatItIsOfferedFor() {
        assertThat(offered()).as("pieces that it is offered for").isNotEmpty();
        PieceTab tab = tab();
        for (UUID piece : offered()) {
            FakeDesk desk = desk();
            PartShowing.check(desk, () -> tab.create(desk, piece));
        }
    }

    @Test
    void holds_whenThePieceIsGone() {
        PieceTab tab = tab();
        EventThread.run(() -> tab.offered(workshop().view(), NOBODY));
        FakeDesk desk = desk();
        PartShowing.check(desk, () -> tab.create(desk, NOBODY));
    }
}
