package org.glintery.testkit.guard;

import java.lang.annotation.ElementType;
import java.lang.annotation.Inherited;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;
import org.junit.jupiter.api.extension.ExtendWith;

/** Puts every guard on a test class and those that extend it. */
@Inherited
@Target(ElementType.TYPE)
@Retention(RetentionPolicy.RUNTIME)
@ExtendWith({QuietLog.class, NothingLeftOpen.class, SwingOnItsThread.class})
public @interface Guarded {}
