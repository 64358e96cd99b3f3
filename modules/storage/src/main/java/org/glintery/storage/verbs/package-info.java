/** The verbs of storage: holders, kit up and kit down on the command line. */
package org.glintery.storage.verbs;
