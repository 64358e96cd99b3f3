/** What modules offer: the one place that asks the platform for services and extension points. */
package org.glintery.workbench.found;
