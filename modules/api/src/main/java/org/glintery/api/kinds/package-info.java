/** All kinds of documents that this API names, in one list. */
package org.glintery.api.kinds;
