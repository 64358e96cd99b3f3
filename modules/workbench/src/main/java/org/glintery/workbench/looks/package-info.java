/** Light and dark, and the size of the text. */
package org.glintery.workbench.looks;
