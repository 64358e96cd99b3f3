/** The screens of the finishes: the Finish tab, and the card of what is still to be written. */
package org.glintery.finishes.ui;
