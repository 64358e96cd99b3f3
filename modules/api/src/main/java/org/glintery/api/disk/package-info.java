/** Writing new files: never over one that is there, nothing left behind on a failure, refusals in plain words. */
package org.glintery.api.disk;
