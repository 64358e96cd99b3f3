package org.glintery.addon.sample;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.Optional;
import java.util.UUID;
import org.glintery.api.Result;
import org.glintery.api.stash.Piece;
import org.glintery.api.stash.Standing;
import org.glintery.api.time.About;
import org.glintery.api.workshop.ChangeSet;
import org.glintery.api.workshop.Stored;
import org.glintery.testkit.MemoryWorkshop;
import org.glintery.testkit.guard.Guarded;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

@Guarded
class CareBookTest {
    private static final LocalDate TODAY = LocalDate.of(2026, 3, 1);
    private final CareBook book = new CareBook();
    private MemoryWorkshop workshop;

    @BeforeEach
    void open() {
        workshop = new MemoryWorkshop();
    }

    @AfterEach
    void close() {
        workshop.close();
    }

    private UUID made(String title, Optional<About> since) {
        UUID id = UUID.randomUUID();
        Piece piece = Piece.titled(title, Standing.SHELVED).with(Standing.MADE, since);
        workshop.apply(ChangeSet.named("Make").create(Piece.TYPE, id, piece).build())
                .orThrow();
        return id;
    }

    private Result<?> write(UUID piece, String on, String words) {
        Stored<Piece> stored = workshop.view().find(Piece.TYPE, piece).orElseThrow();
        About when = About.edtf(on).orElseThrow();
        return book.write(workshop.view(), UUID.randomUUID(), stored, when, words)
                .then(workshop::apply);
    }

    @Test
    void listsNotes_theLatestFirst() {
        UUID piece = made("Net loft", About.edtf("2024-01-01"));
        write(piece, "2025-02", "Dusted");
        write(piece, "2025-06-03", " Pressed a drill back ");
        assertThat(book.notes(workshop.view(), piece))
                .extracting(CareNote::words)
                .containsExactly("Pressed a drill back", "Dusted");
    }

    @Test
    void isDue_whenNobodyLookedForAYear() {
        UUID older = made("Net loft", About.edtf("2024-01-01"));
        UUID oldest = made("Crane", About.edtf("2022"));
        made("Rope-walk", About.edtf("2025-12-24"));
        UUID cared = made("Breakwater", About.edtf("2023"));
        made("Made some day", Optional.empty());
        write(cared, "2025-06", "Dusted");
        assertThat(book.due(workshop.view(), TODAY))
                .extracting(CareBook.Due::piece)
                .containsExactly(oldest, older);
    }

    @Test
    void refusesAnEmptyNote() {
        UUID piece = made("Net loft", About.edtf("2024-01-01"));
        assertThat(write(piece, "2025", "  "))
                .isInstanceOfSatisfying(
                        Result.Refused.class,
                        no -> assertThat(no.refusal().code()).isEqualTo("blank-note"));
        assertThat(book.notes(workshop.view(), piece)).isEmpty();
    }
}
