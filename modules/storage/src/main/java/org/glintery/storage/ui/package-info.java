/**
 * The screens of storage: the Cabinet, kit up and kit down, and the holders on Today. Classes that are not Swing
 * components decide; windows, parts and views build, bind and paint.
 */
package org.glintery.storage.ui;
