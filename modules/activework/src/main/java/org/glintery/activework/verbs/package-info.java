/** The verbs of the bench: start, sit, rest, forecast and complete. */
package org.glintery.activework.verbs;
