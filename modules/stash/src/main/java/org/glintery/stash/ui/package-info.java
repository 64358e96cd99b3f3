/**
 * The screens of the stash: the legend of a piece, and the shortages on Today. Classes that are not Swing components
 * decide; parts and components build, bind and show.
 */
package org.glintery.stash.ui;
