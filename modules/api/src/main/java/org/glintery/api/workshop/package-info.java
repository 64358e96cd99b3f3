/**
 * The workshop on disk as everyone sees it: {@link org.glintery.api.workshop.Workshop} is the handle,
 * {@link org.glintery.api.workshop.View} what it holds at one moment,
 * {@link org.glintery.api.workshop.ChangeSet} the only way to change it. The code below is the sample add-on's, in
 * {@code modules/addon-sample}.
 *
 * <p>How to keep a kind of document of your own:
 *
 * <ol>
 * <li>Write a record of what is kept; it becomes JSON by the names of its components:
 *     <pre>{@code
 * public record CareNote(UUID piece, About on, String words)
 * }</pre>
 * <li>Name its owner, its kind and its version. Owner and kind are words, and its key for decades: they never change.
 *     <pre>{@code
 * public static final DocumentType<CareNote> TYPE =
 *         new DocumentType<>("care", "note", 2, CareNote.class, List.of(CareNote::fromVersion1));
 * }</pre>
 * <li>When its fields change, raise the version and add what makes the next version out of the one before:
 *     <pre>{@code
 * private static Json.Obj fromVersion1(Json.Obj body) {
 *     return body.get("day")
 *             .map(day -> body.without("day").with("on", day))
 *             .orElse(body);
 * }
 * }</pre>
 * <li>Put it in a change with a sentence for the undo menu:
 *     <pre>{@code
 * return Result.ok(ChangeSet.named(Bundle.CareBook_change(title))
 *         .create(CareNote.TYPE, id, new CareNote(piece.id(), on, words.strip()))
 *         .build());
 * }</pre>
 * <li>Say what is to be computed from all of them; a {@link org.glintery.api.workshop.Derived} in a constant is computed
 *     once a view:
 *     <pre>{@code
 * private static final Derived<Map<UUID, List<CareNote>>> BY_PIECE = CareBook::byPiece;
 * }</pre>
 * <li>Ask a view for it:
 *     <pre>{@code
 * return view.derived(BY_PIECE).getOrDefault(piece, List.of());
 * }</pre>
 * </ol>
 *
 * <p>How to bring a service, for screens, verbs and other add-ons to share:
 *
 * <ol>
 * <li>Write a class whose methods compute from a view and change nothing. What a user can get wrong is a returned refusal:
 *     <pre>{@code
 * return Result.refused("blank-note", Bundle.CareBook_blank());
 * }</pre>
 * <li>Write its {@link org.glintery.api.workshop.ServiceFactory}, and register that by its annotation:
 *     <pre>{@code
 * @ServiceProvider(service = ServiceFactory.class)
 * public final class CareBookFactory implements ServiceFactory<CareBook> {
 *
 *     @Override
 *     public Class<CareBook> service() {
 *         return CareBook.class;
 *     }
 *
 *     @Override
 *     public CareBook create(Workshop workshop) {
 *         return new CareBook();
 *     }
 * }
 * }</pre>
 * <li>Ask the workshop for it:
 *     <pre>{@code
 * CareBook book = call.workshop().find(CareBook.class).orElseThrow();
 * }</pre>
 *     A service of another module may be absent: then say in words what is missing.
 * </ol>
 */
package org.glintery.api.workshop;
