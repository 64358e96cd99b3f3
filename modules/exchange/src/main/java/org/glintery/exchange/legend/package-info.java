/** Legends from CSV: what the columns mean, what the cells say, and which rows can't be taken in and why. */
package org.glintery.exchange.legend;
