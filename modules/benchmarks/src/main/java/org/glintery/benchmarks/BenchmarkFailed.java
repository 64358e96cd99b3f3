package org.glintery.benchmarks;

/** A benchmark can't be carried through, or what it measures did not do its work. */
public final class BenchmarkFailed extends RuntimeException {
    private static final long serialVersionUID = 1L;

    public BenchmarkFailed(String message) {
        super(message);
    }
}
