/** Pictures from files: {@link org.glintery.charts.picture.PictureFile} reads one, with how its numbers stand for light. */
package org.glintery.charts.picture;
