/** The screens of framing: the Frame tab and the Framing bench, with the piece drawn to scale as it will hang. */
package org.glintery.framing.ui;
