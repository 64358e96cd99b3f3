/** The verb of framing: {@code piece frame}. */
package org.glintery.framing.verbs;
