/**
 * Dates as people remember them: {@link org.glintery.api.time.About}.
 */
package org.glintery.api.time;
