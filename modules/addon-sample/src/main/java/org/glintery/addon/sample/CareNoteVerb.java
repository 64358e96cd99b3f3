package org.glintery.addon.sample;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.glintery.api.stash.Piece;
import org.glintery.api.time.About;
import org.glintery.api.verb.Param;
import org.glintery.api.verb.Verb;
import org.glintery.api.verb.VerbCall;
import org.glintery.api.verb.VerbResult;
import org.glintery.api.verb.VerbSteps;
import org.glintery.api.verb.WrittenDay;
import org.glintery.api.workshop.Stored;
import org.openide.util.NbBundle.Messages;
import org.openide.util.lookup.ServiceProvider;

/** {@code care note}: writes down what was done for a made piece. */
@ServiceProvider(service = Verb.class)
public final class CareNoteVerb implements Verb {

    /** The note that was written, and how many the piece has now. */
    public record Noted(UUID id, UUID piece, About on, String words, int notes) {}

    @Override
    public String name() {
        return "care note";
    }

    @Override
    @Messages("CareNoteVerb.summary=Write down what was done for a made piece")
    public String summary() {
        return Bundle.CareNoteVerb_summary();
    }

    @Override
    public String feature() {
        return "care";
    }

    @Override
    @Messages({
        "CareNoteVerb.piece=its title or id",
        "CareNoteVerb.words=what was done, such as \"Dusted\"",
        "CareNoteVerb.on=when, as 'about October'; today when not said"
    })
    public List<Param> params() {
        return List.of(
                Param.positional("piece", "PIECE", Bundle.CareNoteVerb_piece()),
                Param.positional("words", "WORDS", Bundle.CareNoteVerb_words()),
                Param.option("on", "WHEN", Bundle.CareNoteVerb_on()));
    }

    @Override
    public Class<? extends Record> answers() {
        return Noted.class;
    }

    @Override
    public VerbResult run(VerbCall call) {
        return VerbSteps.named(call, Piece.TYPE, Piece::title, call.need("piece"), piece -> write(call, piece));
    }

    @Messages({
        "# {0} - what was typed",
        "CareNoteVerb.when=--on ''{0}'' is not understood. Write 2025-03-31 or ''about October 2024''."
    })
    private static VerbResult write(VerbCall call, Stored<Piece> piece) {
        Optional<About> on = call.value("on")
                .map(words -> WrittenDay.of(call, words))
                .orElseGet(() -> Optional.of(About.on(LocalDate.now(call.clock()))));
        if (on.isEmpty()) {
            return VerbResult.wrongUsage(Bundle.CareNoteVerb_when(call.need("on")));
        }
        UUID id = UUID.randomUUID();
        CareBook book = call.workshop().find(CareBook.class).orElseThrow();
        return VerbSteps.apply(
                call,
                book.write(call.workshop().view(), id, piece, on.get(), call.need("words")),
                () -> said(call, book, id, piece));
    }

    @Messages({"# {0} - title", "# {1} - when", "CareNoteVerb.done=Noted for {0}, {1}."})
    private static VerbResult said(VerbCall call, CareBook book, UUID id, Stored<Piece> piece) {
        CareNote note =
                call.workshop().view().find(CareNote.TYPE, id).orElseThrow().value();
        int notes = book.notes(call.workshop().view(), piece.id()).size();
        return VerbResult.said(
                new Noted(id, piece.id(), note.on(), note.words(), notes),
                Bundle.CareNoteVerb_done(piece.value().title(), note.on().words()));
    }
}
