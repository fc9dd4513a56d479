package org.rimefast.check.internal;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.function.Function;

/** Runs independent work on several threads and gives the results in order. */
public final class Parallel {
  private Parallel() {}

  /** What {@code work} makes of each item, in the items' order whatever the number of threads. */
  public static <T, R> List<R> map(List<T> items, int threads, Function<T, R> work) {
    if (threads == 1 || items.size() < 2) {
      return items.stream().map(work).toList();
    }
    ExecutorService pool = Executors.newFixedThreadPool(Math.min(threads, items.size()));
    try {
      List<Future<R>> futures = new ArrayList<>();
      for (T item : items) {
        futures.add(pool.submit(() -> work.apply(item)));
      }
      List<R> results = new ArrayList<>();
      for (Future<R> future : futures) {
        results.add(future.get());
      }
      return results;
    } catch (ExecutionException e) {
      if (e.getCause() instanceof RuntimeException cause) {
        throw cause;
      }
      throw new IllegalStateException("work on another thread failed", e.getCause());
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException("interrupted while waiting for other threads", e);
    } finally {
      pool.shutdownNow();
    }
  }
}
