/**
 * Sums over plain numbers, without the words of the workshop: {@link org.glintery.planning.CompletionForecast} when work
 * will be done, {@link org.glintery.planning.FrameSums} and its neighbours what a frame needs,
 * {@link org.glintery.planning.PocketFilling} what goes into which pocket,
 * {@link org.glintery.planning.WeighingCount} and {@link org.glintery.planning.DrillsPerCanvas} how many there are.
 * Everything is immutable, free of I/O, and safe for any thread; the same input always gives the same answer.
 */
package org.glintery.planning;
