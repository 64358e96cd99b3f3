/** What other modules offer: the one place that asks the platform for it. */
package org.glintery.exchange.found;
