/**
 * The pictures of the demo, drawn by code and without a screen. A {@link org.glintery.demo.scene.Scene} composes, a {@link
 * org.glintery.demo.scene.Light} gives the colours of an hour, a {@link org.glintery.demo.scene.Brush} draws shapes and an
 * {@link org.glintery.demo.scene.Air} lays clouds, mist, reflections and grain over them. No fonts are used: the same seed
 * gives the same pixels.
 */
package org.glintery.demo.scene;
