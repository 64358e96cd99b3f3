/** The screens of the finishes: the Finish tab, the card of what is still to be written, old finishes in a row. */
package org.glintery.finishes.ui;
