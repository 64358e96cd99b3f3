/** The verbs of the finishes: {@code finish show}, {@code finish list} and {@code finish edit}. */
package org.glintery.finishes.verbs;
