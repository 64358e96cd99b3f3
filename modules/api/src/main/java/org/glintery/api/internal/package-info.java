/** What the packages of the API share and nobody else sees. */
package org.glintery.api.internal;
