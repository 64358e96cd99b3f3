/**
 * The record of made pieces. {@link org.glintery.api.finishes.Finishes} is the service.
 */
package org.glintery.api.finishes;
