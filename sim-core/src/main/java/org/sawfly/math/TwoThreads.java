package org.sawfly.math;

import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;

/** Two pieces of work at the same time that share nothing they change, so that the outcome is that of one after the other. */
public final class TwoThreads {
    private TwoThreads() {}

    /** Does both, one on a thread of its own, and returns when both are done. What either throws is thrown here. */
    public static void run(Runnable here, Runnable there) {
        FutureTask<Void> other = new FutureTask<>(there, null);
        Thread thread = new Thread(other, "second half");
        thread.setDaemon(true);
        thread.start();
        try {
            here.run();
        } finally {
            await(other);
        }
    }

    private static void await(FutureTask<Void> task) {
        boolean interrupted = false;
        while (true) {
            try {
                task.get();
                break;
            } catch (InterruptedException e) {
                interrupted = true;
            } catch (ExecutionException e) {
                throw e.getCause() instanceof RuntimeException known ? known : new IllegalStateException(e.getCause());
            }
        }
        if (interrupted) {
            Thread.currentThread().interrupt();
        }
    }
}
