/**
 * Drills, amounts, spots and the movements between them. Nothing in the ledger is edited or deleted.
 */
package org.glintery.api.ledger;
