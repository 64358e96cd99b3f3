/**
 * Screens by outsiders. The code below is the sample add-on's, in {@code modules/addon-sample}.
 *
 * <p>How to add a tab to the piece page, in one file:
 *
 * <ol>
 * <li>Write a class that implements {@link org.glintery.workbench.spi.PieceTab}, and register it by its annotation:
 *     <pre>{@code
 * @ServiceProvider(service = PieceTab.class)
 * public final class CareTab implements PieceTab
 * }</pre>
 * <li>Say what it is called and where it stands among the tabs:
 *     <pre>{@code
 * public String title() {
 *     return Bundle.CareTab_title();
 * }
 *
 * @Override
 * public int position() {
 *     return POSITION;
 * }
 * }</pre>
 * <li>If it is not for every piece, say for which; this is asked often and must be quick:
 *     <pre>{@code
 * public boolean offered(View view, UUID piece) {
 *     return view.find(Piece.TYPE, piece)
 *             .filter(stored -> stored.value().standing() == Standing.MADE)
 *             .isPresent();
 * }
 * }</pre>
 * <li>In {@code create}, return a {@link org.glintery.workbench.spi.ScreenPart} of the model that it shows:
 *     <pre>{@code
 * private static final class Part implements ScreenPart<List<CareNote>>
 * }</pre>
 * <li>Its {@code prepare} reads the workshop, in the background and without Swing; five seconds at most:
 *     <pre>{@code
 * public List<CareNote> prepare(View view) {
 *     return book.notes(view, piece);
 * }
 * }</pre>
 * <li>Its {@code show} puts the model into the component, on the event thread; it is called again after every change.
 *     Build the component from {@link org.glintery.workbench.parts}:
 *     <pre>{@code
 * public void show(List<CareNote> written) {
 *     notes.removeAll();
 *     for (CareNote note : written) {
 *         notes.field(note.on().words(), Texts.body(note.words()));
 *     }
 *     if (written.isEmpty()) {
 *         notes.whole(Texts.wrappedHint(Bundle.CareTab_none()));
 *     }
 *     notes.revalidate();
 *     notes.repaint();
 * }
 * }</pre>
 * <li>Change the workshop through {@link org.glintery.workbench.spi.Desk#change}. It works in the background and shows a
 *     refusal by itself:
 *     <pre>{@code
 * desk.change(view -> written(view, when, typed), applied -> words.setText(""));
 * }</pre>
 * </ol>
 *
 * <p>How to add a card to Today, in one file:
 *
 * <ol>
 * <li>Write a class that implements {@link org.glintery.workbench.spi.TodayCard}, and register it by its annotation:
 *     <pre>{@code
 * @ServiceProvider(service = TodayCard.class)
 * public final class CareCard implements TodayCard
 * }</pre>
 * <li>Give it a title and a position, and return a part from {@code create}, as for a tab:
 *     <pre>{@code
 * public ScreenPart<?> create(Desk desk) {
 *     return new Part(desk);
 * }
 * }</pre>
 * <li>Let its lines lead to the piece they speak of:
 *     <pre>{@code
 * sheet.whole(Buttons.link(one.title(), () -> desk.openPiece(one.piece())));
 * }</pre>
 * </ol>
 *
 * <p>What throws or is too slow is named to the user and set aside until the user takes it back; the rest goes on.
 */
package org.glintery.workbench.spi;
