/** The menus and the toolbar of the application: only what exists. */
package org.glintery.workbench.menu;
