package org.glintery.selftest;

import static org.junit.platform.engine.discovery.DiscoverySelectors.selectClass;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.logging.Level;
import java.util.logging.Logger;
import org.junit.platform.launcher.core.LauncherDiscoveryRequestBuilder;
import org.junit.platform.launcher.core.LauncherFactory;
import org.openide.LifecycleManager;
import org.openide.windows.OnShowing;
import org.openide.windows.WindowManager;

/** Runs the tests once the window system is ready, then ends the application. */
@OnShowing
public final class SelfTestRun implements Runnable {
    private static final Logger LOG = Logger.getLogger(SelfTestRun.class.getName());
    private static final String FOLDER = "glintery.selftest";
    private static final Map<String, List<Class<?>>> TESTS = Map.of(
            "demo", List.of(WindowsTest.class, DialogsTest.class),
            "first-use", List.of(FirstUseTest.class),
            "switched-off", List.of(FeatureOffTest.class));

    @Override
    public void run() {
        if (System.getProperty(FOLDER) != null) {
            WindowManager.getDefault().invokeWhenUIReady(() -> new Thread(SelfTestRun::tests, "Self-test").start());
        }
    }

    static Path folder() {
        return Path.of(System.getProperty(FOLDER));
    }

    /** Where screenshots go. */
    static Path shots() {
        return folder().resolve(System.getProperty("glintery.selftest.name", "screenshots"));
    }

    private static void tests() {
        int code = 1;
        try {
            // JUnit finds its engines through the thread's loader
            Thread.currentThread().setContextClassLoader(SelfTestRun.class.getClassLoader());
            ResultsFile results = new ResultsFile(folder().resolve("results.xml"));
            LauncherFactory.create()
                    .execute(
                            LauncherDiscoveryRequestBuilder.request()
                                    .selectors(TESTS.get(System.getProperty("glintery.selftest.what", "demo")).stream()
                                            .map(test -> selectClass(test))
                                            .toList())
                                    .build(),
                            results);
            code = results.allPassed() ? 0 : 1;
        } catch (RuntimeException | LinkageError e) { // whatever it is, the application must end and say so
            LOG.log(Level.SEVERE, "The self-test itself failed", e);
        }
        LifecycleManager.getDefault().exit(code);
    }
}
