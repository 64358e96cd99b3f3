/**
 * Screens by outsiders. How to add a tab to the piece page, or a card to Today:
 *
 * <ol>
 * <li>Write a class that implements {@link org.glintery.workbench.spi.PieceTab} or
 *     {@link org.glintery.workbench.spi.TodayCard}.
 * <li>Annotate it with {@code @ServiceProvider(service = PieceTab.class)} (or {@code TodayCard.class}).
 * <li>In {@code create}, return a {@link org.glintery.workbench.spi.ScreenPart}: {@code prepare} computes what to show in
 *     the background, {@code show} paints it on the event thread.
 * <li>Change the workshop through {@link org.glintery.workbench.spi.Desk#change}.
 * </ol>
 */
package org.glintery.workbench.spi;
