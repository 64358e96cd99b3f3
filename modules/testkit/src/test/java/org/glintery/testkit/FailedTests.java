package org.glintery.testkit;

import static org.junit.platform.engine.discovery.DiscoverySelectors.selectClass;

import java.util.ArrayList;
import java.util.List;
import org.junit.platform.engine.TestExecutionResult;
import org.junit.platform.launcher.TestExecutionListener;
import org.junit.platform.launcher.TestIdentifier;
import org.junit.platform.launcher.core.LauncherDiscoveryRequestBuilder;
import org.junit.platform.launcher.core.LauncherFactory;

/** Runs a test class inside a test, and tells which of its tests failed. */
final class FailedTests implements TestExecutionListener {
    private final List<String> failed = new ArrayList<>();
    private int ran;

    private FailedTests() {}

    /** By the names of their methods. @throws IllegalStateException when no test ran */
    static List<String> of(Class<?> testClass) {
        FailedTests listener = new FailedTests();
        LauncherFactory.create()
                .execute(
                        LauncherDiscoveryRequestBuilder.request()
                                .selectors(selectClass(testClass))
                                .build(),
                        listener);
        if (listener.ran == 0) {
            throw new IllegalStateException("no test of " + testClass.getName() + " ran");
        }
        return listener.failed;
    }

    @Override
    public void executionFinished(TestIdentifier test, TestExecutionResult result) {
        if (test.isTest()) {
            ran++;
        }
        if (result.getStatus() == TestExecutionResult.Status.FAILED) {
            failed.add(test.getDisplayName().replaceAll("\\(.*", ""));
        }
    }
}
