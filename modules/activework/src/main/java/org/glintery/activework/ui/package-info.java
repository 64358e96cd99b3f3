/** The screens of the bench: the Sittings and Questions tabs, and the cards of what is on the bench and of open questions. */
package org.glintery.activework.ui;
