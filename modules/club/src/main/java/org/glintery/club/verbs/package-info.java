/** The club's verbs. */
package org.glintery.club.verbs;
