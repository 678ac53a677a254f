package io.ovenmark.web;

import io.ovenmark.desk.Progress;
import io.ovenmark.notebook.Refusal;
import java.security.SecureRandom;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.function.Consumer;

/**
 * What takes long: begun by an order, which answers at once with the task; asked about until it has
 * ended; cancelled when it is no longer wanted. On the page {@code followTask} of {@code
 * /parts/progress.js} does the asking.
 *
 * <pre>{@code
 * routes.order(
 *     "search/begin",
 *     context -> tasks.begin("search", "Reading the notes", progress -> build(progress)));
 * }</pre>
 */
final class Tasks implements Area, AutoCloseable {
  private static final int AT_ONCE = 2;
  private static final int KEPT = 64;
  private static final int ID_BYTES = 16;

  /** What a task does. */
  @FunctionalInterface
  interface Work {
    /**
     * Does it.
     *
     * @param progress to be told how far it is; throws when the task is cancelled
     * @return the outcome, a record for the page; may be null
     */
    Object run(Progress progress);
  }

  /**
   * How a task stands.
   *
   * @param task its id
   * @param words what it does, for people
   * @param state {@code waiting}, {@code running}, {@code done}, {@code cancelled} or {@code
   *     failed}
   * @param done parts done so far
   * @param total parts in all; 0 while that is unknown
   * @param outcome of a task that is done; else null
   * @param failure of one that failed; else null
   */
  record TaskView(
      String task,
      String words,
      String state,
      long done,
      long total,
      Object outcome,
      Failures.Failure failure) {
    boolean ended() {
      return !state.equals("waiting") && !state.equals("running");
    }
  }

  /** An order about one task. */
  record About(String task) {
    About {
      if (task == null) {
        throw unknown("");
      }
    }
  }

  /** A task: its view, replaced as it goes on. */
  private static final class Running implements Progress {
    private final String kind;
    private TaskView view;
    private boolean unwanted;

    Running(String kind, TaskView view) {
      this.kind = kind;
      this.view = view;
    }

    synchronized TaskView view() {
      return view;
    }

    synchronized void cancel() {
      unwanted = true;
      if (view.state().equals("waiting")) {
        end("cancelled", null, null);
      }
    }

    @Override
    public synchronized void at(long done, long total) {
      if (unwanted) {
        throw new CancellationException();
      }
      view = new TaskView(view.task(), view.words(), "running", done, total, null, null);
    }

    synchronized void end(String state, Object outcome, Failures.Failure failure) {
      view =
          new TaskView(
              view.task(), view.words(), state, view.done(), view.total(), outcome, failure);
    }
  }

  private final SecureRandom random = new SecureRandom();
  private final Consumer<Throwable> faults;
  private final Map<String, Running> tasks = new LinkedHashMap<>();
  private final ExecutorService threads =
      Executors.newFixedThreadPool(
          AT_ONCE,
          work -> {
            Thread thread = new Thread(work, "task");
            thread.setDaemon(true);
            return thread;
          });

  /**
   * No tasks yet.
   *
   * @param faults told of what went wrong inside a task
   */
  Tasks(Consumer<Throwable> faults) {
    this.faults = faults;
  }

  @Override
  public void addTo(Routes routes) {
    routes
        .question("task", context -> of(Asked.text(context, "task")))
        .order("task/cancel", context -> cancel(Asked.order(context, About.class).task()));
  }

  /**
   * Begins a task, or joins the one of the same kind that has not ended yet.
   *
   * @param kind tasks of one kind do the same, such as {@code search}
   * @param words what it does, for people: "Reading the notes of all revisions"
   * @param work what to do, on a thread of its own
   * @return how it stands
   */
  TaskView begin(String kind, String words, Work work) {
    Running task;
    synchronized (tasks) {
      Optional<Running> same =
          tasks.values().stream()
              .filter(each -> each.kind.equals(kind) && !each.view().ended())
              .findFirst();
      if (same.isPresent()) {
        return same.get().view();
      }
      byte[] id = new byte[ID_BYTES];
      random.nextBytes(id);
      String name = HexFormat.of().formatHex(id);
      task = new Running(kind, new TaskView(name, words, "waiting", 0, 0, null, null));
      forgetOld();
      tasks.put(name, task);
    }
    threads.execute(() -> run(task, work));
    return task.view();
  }

  private void forgetOld() {
    var ended = tasks.values().iterator();
    while (tasks.size() >= KEPT && ended.hasNext()) {
      if (ended.next().view().ended()) {
        ended.remove();
      }
    }
  }

  private void run(Running task, Work work) {
    try {
      task.at(0, 0);
      task.end("done", work.run(task), null);
    } catch (CancellationException cancelled) {
      task.end("cancelled", null, null);
    } catch (RuntimeException | Error thrown) {
      task.end("failed", null, Failures.told(thrown, faults));
    }
  }

  /**
   * How a task stands.
   *
   * @throws Refusal when there is no such task
   */
  TaskView of(String task) {
    return find(task).view();
  }

  /**
   * Asks a task to end; it does so where that does no harm, so it may still get done.
   *
   * @return how it stands right now
   * @throws Refusal when there is no such task
   */
  TaskView cancel(String task) {
    Running found = find(task);
    found.cancel();
    return found.view();
  }

  private Running find(String task) {
    synchronized (tasks) {
      return Optional.ofNullable(tasks.get(task)).orElseThrow(() -> unknown(task));
    }
  }

  private static Refusal unknown(String task) {
    return new Refusal(
        Refusal.Reason.NOT_FOUND,
        task,
        "This task is not known any more.",
        "The viewer was perhaps started again: begin it anew.");
  }

  /** Cancels all. */
  @Override
  public void close() {
    synchronized (tasks) {
      tasks.values().forEach(Running::cancel);
    }
    threads.shutdown();
  }
}
