/** How a chart is seen from where it hangs: single drills run together to what lies between them. */
package org.glintery.charts.viewing;
