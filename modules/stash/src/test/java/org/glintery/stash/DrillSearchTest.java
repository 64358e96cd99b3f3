package org.glintery.stash;

import static org.assertj.core.api.Assertions.assertThat;
import static org.glintery.stash.WorkshopInFolder.T1;
import static org.glintery.stash.WorkshopInFolder.T2;
import static org.glintery.stash.WorkshopInFolder.line;

import java.nio.file.Path;
import java.util.Optional;
import org.glintery.api.ledger.Balance;
import org.glintery.api.ledger.Drill;
import org.glintery.api.stash.CardEntry;
import org.glintery.api.stash.Stash.KnownDrill;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class DrillSearchTest {

    private WorkshopInFolder shop;

    @BeforeEach
    void open(@TempDir Path folder) {
        shop = WorkshopInFolder.at(folder);
    }

    @AfterEach
    void close() {
        shop.close();
    }

    @Test
    void findsByName_withWhatIsAvailable() {
        shop.shelve("Rope-walk", line("A", T1, 10, 20));
        shop.bag("leftovers", T1, 5);
        shop.apply(shop.stash()
                .describe(
                        shop.view(), "own", "T1", new CardEntry(Optional.of("Harbour mist"), Optional.empty(), false)));

        assertThat(shop.stash().find(shop.view(), "mist own")).singleElement().satisfies(known -> {
            assertThat(known.drill()).isEqualTo(T1);
            assertThat(known.inTheHouse()).isEqualTo(new Balance(25, 0, 0));
            assertThat(known.available()).isEqualTo(new Balance(5, 0, 0));
        });
    }

    @Test
    void listsCodesAsPeopleCount() {
        Drill t10 = Drill.of(T1.shape(), 280, "own", "T10");
        shop.shelve("Rope-walk", line("A", t10, 1, 1), line("B", T2, 1, 1), line("C", T1, 1, 1));

        assertThat(shop.stash().find(shop.view(), "t"))
                .extracting(KnownDrill::drill)
                .containsExactly(T1, T2, t10);
    }
}
