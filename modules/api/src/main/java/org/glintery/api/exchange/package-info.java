/**
 * Bringing kits in and taking everything out. Each is a service of the workshop.
 */
package org.glintery.api.exchange;
