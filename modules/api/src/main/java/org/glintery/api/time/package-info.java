/**
 * Dates as people remember them: {@link org.glintery.api.time.About} is all that others see. Behind it a small model of
 * the Extended Date/Time Format (the {@code Edtf} types and their parser), and the English in which such dates are said
 * and printed. Reading and printing are a pair in one language, so their words stand in the code beside each other.
 */
package org.glintery.api.time;
