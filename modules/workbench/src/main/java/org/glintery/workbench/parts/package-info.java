/** Parts that every screen draws with. */
package org.glintery.workbench.parts;
