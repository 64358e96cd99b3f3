/**
 * Clears swap rounds: {@link org.glintery.planning.clearing.RoundClearing} takes a
 * {@link org.glintery.planning.clearing.Round} of offers and wants and answers with a
 * {@link org.glintery.planning.clearing.Clearing}: who sends what to whom, and what is proven about it. Traders and kinds are
 * numbers. What is public is immutable, free of I/O and safe for any thread, and the same round always gives the same answer.
 *
 * <p>How it goes: {@code MostWants} meets most wants by flows and hands on a {@code Face}, all the ways to do so;
 * {@code FewestParcels} searches that for least postage and fewest parcels, and {@code FairestAim} for the fairest of those.
 */
package org.glintery.planning.clearing;
