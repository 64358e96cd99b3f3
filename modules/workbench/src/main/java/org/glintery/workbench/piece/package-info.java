/** The page of one piece: its job card, its story, and the tabs that features bring. */
package org.glintery.workbench.piece;
