/**
 * The swap round: who in a club should send which spare packets to whom. An add-on that uses nothing an outsider lacks;
 * the sums are {@link org.glintery.planning.clearing.RoundClearing}'s.
 */
package org.glintery.club.swaps;
