package org.glintery.selftest;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.platform.engine.TestExecutionResult;
import org.junit.platform.launcher.TestExecutionListener;
import org.junit.platform.launcher.TestIdentifier;
import org.junit.platform.launcher.TestPlan;

/** Writes what ran as JUnit XML. */
final class ResultsFile implements TestExecutionListener {
    private final Path file;
    private final List<String> cases = new ArrayList<>();
    private int tests;
    private int failures;

    ResultsFile(Path file) {
        this.file = file;
    }

    boolean allPassed() {
        return tests > 0 && failures == 0;
    }

    @Override
    public void executionFinished(TestIdentifier test, TestExecutionResult result) {
        boolean passed = result.getStatus() == TestExecutionResult.Status.SUCCESSFUL;
        if (!test.isTest() && passed) {
            return;
        }
        tests++;
        String failure = "";
        if (!passed) {
            failures++;
            StringWriter trace = new StringWriter();
            result.getThrowable().ifPresent(t -> t.printStackTrace(new PrintWriter(trace)));
            failure = "<failure>" + escaped(trace.toString()) + "</failure>";
        }
        cases.add("  <testcase name=\"" + escaped(test.getDisplayName()) + "\">" + failure + "</testcase>\n");
    }

    @Override
    public void testPlanExecutionFinished(TestPlan plan) {
        String xml = "<testsuite name=\"windows\" tests=\"" + tests + "\" failures=\"" + failures + "\">\n"
                + String.join("", cases) + "</testsuite>\n";
        try {
            Files.createDirectories(file.getParent());
            Files.writeString(file, xml);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static String escaped(String text) {
        return text.replace("&", "&amp;")
                .replace("<", "&lt;")
                .replace(">", "&gt;")
                .replace("\"", "&quot;");
    }
}
