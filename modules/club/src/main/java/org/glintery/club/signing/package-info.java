/** Keys, signatures and the one way in which a document is written before it is signed. */
package org.glintery.club.signing;
