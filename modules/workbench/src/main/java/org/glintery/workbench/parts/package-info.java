/**
 * Parts that every screen draws with. How to write a window of a feature:
 *
 * <ol>
 * <li>Extend {@link org.glintery.workbench.parts.DeskWindow}; return a
 *     {@link org.glintery.workbench.spi.ScreenPart} from {@code create}. It is prepared in the background and shown again
 *     after every change.
 * <li>Annotate it with {@code @TopComponent.Description}, {@code @TopComponent.Registration} (mode {@code editor}),
 *     {@code @ActionID}, {@code @ActionReference} (path {@code Menu/View}) and {@code @TopComponent.OpenActionRegistration}.
 * <li>Build the component from {@link org.glintery.workbench.parts.Texts}, {@link org.glintery.workbench.parts.Buttons},
 *     {@link org.glintery.workbench.parts.FormSheet}, {@link org.glintery.workbench.parts.Card} and the rest; distances
 *     come from {@link org.glintery.workbench.parts.Space}, icons from {@link org.glintery.workbench.parts.Pictogram}.
 * <li>Own painting asks {@link org.glintery.workbench.parts.Tone} for colours each time it paints.
 * <li>Where there is nothing yet, show an {@link org.glintery.workbench.parts.EmptyNote} that says what to do first.
 * </ol>
 */
package org.glintery.workbench.parts;
