/** The glossary: the words of the trade and ours, each in one plain sentence, and where they stand on screen. */
package org.glintery.workbench.words;
