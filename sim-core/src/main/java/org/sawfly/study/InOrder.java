package org.sawfly.study;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import java.util.function.IntFunction;

/**
 * Works out pieces known by their index on several threads and hands them over in order, in chunks, so that the outcome is
 * the same for any number of threads and the memory needed does not grow with the pieces.
 */
final class InOrder {
    private static final int CHUNK = 64;
    private static final int CHUNKS_AHEAD_PER_THREAD = 3;

    private InOrder() {}

    /**
     * Runs.
     *
     * @param first index of the first piece
     * @param count of pieces, those before the first included
     * @param threads how many
     * @param work makes a piece from its index, on any thread
     * @param sink gets every piece, in order, on the calling thread
     * @param stop asked between pieces; true ends the run after a whole piece
     */
    static <T> void run(
            int first, int count, int threads, IntFunction<T> work, Consumer<T> sink, BooleanSupplier stop) {
        ExecutorService pool = Executors.newFixedThreadPool(threads, runnable -> {
            Thread thread = new Thread(runnable, "study");
            thread.setDaemon(true);
            return thread;
        });
        try {
            inOrder(pool, first, count, threads, work, sink, stop);
        } finally {
            pool.shutdownNow();
        }
    }

    private static <T> void inOrder(
            ExecutorService pool,
            int first,
            int count,
            int threads,
            IntFunction<T> work,
            Consumer<T> sink,
            BooleanSupplier stop) {
        int chunk = Math.max(1, Math.min(CHUNK, (count - first) / (4 * threads)));
        Deque<Future<List<T>>> ahead = new ArrayDeque<>();
        int next = first;
        while (next < count || !ahead.isEmpty()) {
            while (next < count && ahead.size() < threads * CHUNKS_AHEAD_PER_THREAD) {
                int from = next;
                int to = Math.min(count, from + chunk);
                ahead.add(pool.submit(() -> pieces(from, to, work)));
                next = to;
            }
            for (T piece : await(ahead.remove())) {
                if (stop.getAsBoolean()) {
                    return;
                }
                sink.accept(piece);
            }
        }
    }

    private static <T> List<T> pieces(int from, int to, IntFunction<T> work) {
        List<T> pieces = new ArrayList<>(to - from);
        for (int index = from; index < to; index++) {
            pieces.add(work.apply(index));
        }
        return pieces;
    }

    private static <T> List<T> await(Future<List<T>> future) {
        try {
            return future.get();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            return List.of();
        } catch (ExecutionException e) {
            if (e.getCause() instanceof RuntimeException cause) {
                throw cause;
            }
            throw new IllegalStateException(e.getCause());
        }
    }
}
