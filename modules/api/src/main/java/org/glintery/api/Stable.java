package org.glintery.api;

import java.lang.annotation.Documented;
import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/**
 * Marks a type that keeps its meaning: it may gain members but loses and changes none. Interfaces are called by add-ons and
 * implemented by the application, so they may gain methods; those that add-ons implement are marked {@link ExtensionPoint}
 * besides.
 */
@Stable
@Documented
@Retention(RetentionPolicy.RUNTIME)
@Target(ElementType.TYPE)
public @interface Stable {}
