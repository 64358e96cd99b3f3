/** How the window deals with the code of add-ons: timed, watched, and named when something goes wrong. */
package org.glintery.workbench.host;
