/**
 * Verbs: what the command line can do. The code below is the sample add-on's, in {@code modules/addon-sample}.
 *
 * <p>How to add a verb, in one file:
 *
 * <ol>
 * <li>Write a class that implements {@link org.glintery.api.verb.Verb}, and register it by its annotation:
 *     <pre>{@code
 * @ServiceProvider(service = Verb.class)
 * public final class CareNoteVerb implements Verb
 * }</pre>
 * <li>Give it two words: what it is about, then what it does:
 *     <pre>{@code
 * public String name() {
 *     return "care note";
 * }
 * }</pre>
 * <li>Name what it takes, in the order in which it is written; {@code --workshop}, {@code --json} and {@code --help} are
 *     there without your doing:
 *     <pre>{@code
 * return List.of(
 *         Param.positional("piece", "PIECE", Bundle.CareNoteVerb_piece()),
 *         Param.positional("words", "WORDS", Bundle.CareNoteVerb_words()),
 *         Param.option("on", "WHEN", Bundle.CareNoteVerb_on()));
 * }</pre>
 * <li>Declare the record that it answers with; its JSON form is what {@code --json} prints:
 *     <pre>{@code
 * public record Noted(UUID id, UUID piece, About on, String words, int notes) {}
 * }</pre>
 * <li>In {@code run}, find what a name means. {@link org.glintery.api.verb.VerbSteps} ends the verb with the candidates
 *     when the name is unknown or ambiguous:
 *     <pre>{@code
 * return VerbSteps.named(call, Piece.TYPE, Piece::title, call.need("piece"), piece -> write(call, piece));
 * }</pre>
 * <li>Read dates with {@link org.glintery.api.verb.WrittenDay} and numbers with
 *     {@link org.glintery.api.verb.WrittenWhole} and {@link org.glintery.api.verb.WrittenDecimal}, as all verbs do:
 *     <pre>{@code
 * Optional<About> on = call.value("on")
 *         .map(words -> WrittenDay.of(call, words))
 *         .orElseGet(() -> Optional.of(About.on(LocalDate.now(call.clock()))));
 * }</pre>
 * <li>What was written wrongly ends as wrong usage, and nothing is changed:
 *     <pre>{@code
 * return VerbResult.wrongUsage(Bundle.CareNoteVerb_when(call.need("on")));
 * }</pre>
 * <li>Apply the change; a refusal ends the verb in words:
 *     <pre>{@code
 * return VerbSteps.apply(
 *         call,
 *         book.write(call.workshop().view(), id, piece, on.get(), call.need("words")),
 *         () -> said(call, book, id, piece));
 * }</pre>
 * <li>Answer with the record and a text for people:
 *     <pre>{@code
 * return VerbResult.said(
 *         new Noted(id, piece.id(), note.on(), note.words(), notes),
 *         Bundle.CareNoteVerb_done(piece.value().title(), note.on().words()));
 * }</pre>
 * </ol>
 */
package org.glintery.api.verb;
