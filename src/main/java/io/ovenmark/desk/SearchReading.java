package io.ovenmark.desk;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;

/**
 * Reads what the search has not read yet: a little at once, much in a thread of its own that tells
 * how far it is and can be stopped. What was read is kept when it is stopped.
 */
final class SearchReading {
  /** So much is read while somebody waits; takes some tenths of a second. */
  private static final int AT_ONCE = 500;

  private static final int SAVE_EVERY = 4000;

  private final SearchShelf shelf;
  private final AtomicInteger done = new AtomicInteger();
  private volatile int total;
  private volatile boolean stopped;
  private volatile RuntimeException fault;
  private Thread thread;

  /** Is told how far the reading is. */
  @FunctionalInterface
  interface Progress {
    void at(int done, int total);
  }

  SearchReading(SearchShelf shelf) {
    this.shelf = shelf;
  }

  /** Reads everything now. */
  void finish(Progress progress) {
    read(shelf.unread(), progress);
  }

  /** Reads what one formula has. */
  void finish(String formula) {
    read(shelf.unread(formula), (read, of) -> {});
  }

  /** Reads a little now, or begins to read in a thread of its own unless somebody stopped that. */
  synchronized void begin(boolean again) {
    if (isRunning()) {
      return;
    }
    if (again) {
      stopped = false;
    }
    List<SearchShelf.Job> jobs = shelf.view().unread() == 0 ? List.of() : shelf.unread();
    if (jobs.size() <= AT_ONCE) {
      read(jobs, (read, of) -> {});
    } else if (!stopped) {
      done.set(0);
      total = jobs.size();
      thread = new Thread(() -> readApart(jobs), "ovenmark-search");
      thread.setDaemon(true);
      thread.start();
    } else {
      done.set(0);
      total = jobs.size();
    }
  }

  private void readApart(List<SearchShelf.Job> jobs) {
    try {
      read(jobs, (read, of) -> done.set(read));
    } catch (RuntimeException e) {
      fault = e;
      stopped = true;
    }
  }

  /** Stops; what was read is kept. */
  synchronized void stop() {
    stopped = true;
    if (thread != null) {
      try {
        thread.join();
      } catch (InterruptedException e) {
        Thread.currentThread().interrupt();
      }
    }
  }

  /** How far it is, null when there is nothing more to read; throws what made it fail. */
  synchronized SearchViews.Reading state() {
    RuntimeException failed = fault;
    if (failed != null) {
      fault = null;
      throw failed;
    }
    boolean running = isRunning();
    if (!running && shelf.view().unread() == 0) {
      return null;
    }
    return new SearchViews.Reading(done.get(), total, running);
  }

  private boolean isRunning() {
    return thread != null && thread.isAlive();
  }

  private void read(List<SearchShelf.Job> jobs, Progress progress) {
    List<SearchShelf.Job> all = new ArrayList<>(jobs);
    int read = 0;
    for (SearchShelf.Job job : all) {
      if (stopped && Thread.currentThread() == thread) {
        break;
      }
      job.run();
      read++;
      if (read % SAVE_EVERY == 0) {
        shelf.index().save();
      }
      progress.at(read, all.size());
    }
    shelf.index().save();
  }
}
