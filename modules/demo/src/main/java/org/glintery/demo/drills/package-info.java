/**
 * From a painted picture to drills: the invented colour card, the cells of a picture in its colours, and a picture of the
 * canvas as it looks with some or all of its drills laid.
 */
package org.glintery.demo.drills;
