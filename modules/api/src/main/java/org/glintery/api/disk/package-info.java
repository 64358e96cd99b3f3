/**
 * Writing new files: never over one that is there, nothing left behind on a failure, refusals in plain words. And the
 * second folder, into which a workshop is copied by itself.
 */
package org.glintery.api.disk;
