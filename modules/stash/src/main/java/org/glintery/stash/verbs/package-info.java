/** The verbs of the stash: kits, pieces and drills on the command line. */
package org.glintery.stash.verbs;
