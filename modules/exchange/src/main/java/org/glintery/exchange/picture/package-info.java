/** Pictures on their way to others: what kind they are, and what they tell besides the picture taken out. */
package org.glintery.exchange.picture;
