package io.ovenmark.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.ovenmark.notebook.Refusal;
import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.Semaphore;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

class TasksTest {
  private static final int SECONDS = 20;

  private final List<Throwable> faults = new CopyOnWriteArrayList<>();
  private final Tasks tasks = new Tasks(faults::add);

  @AfterEach
  void close() {
    tasks.close();
  }

  @Test
  void aTaskTellsHowFarItIsAndWhatCameOfIt() {
    CountDownLatch half = new CountDownLatch(1);
    CountDownLatch seen = new CountDownLatch(1);
    Tasks.TaskView begun =
        tasks.begin(
            "count",
            "Counting",
            progress -> {
              progress.at(5, 10);
              half.countDown();
              await(seen);
              progress.at(10, 10);
              return List.of("ten");
            });
    assertThat(begun.words()).isEqualTo("Counting");
    await(half);
    assertThat(tasks.of(begun.task()))
        .extracting(Tasks.TaskView::state, Tasks.TaskView::done, Tasks.TaskView::total)
        .containsExactly("running", 5L, 10L);
    seen.countDown();
    Tasks.TaskView ended = ended(begun.task());
    assertThat(ended.state()).isEqualTo("done");
    assertThat(ended.outcome()).isEqualTo(List.of("ten"));
    assertThat(faults).isEmpty();
  }

  @Test
  void aCancelledTaskEndsWhereItTellsHowFarItIs() {
    CountDownLatch begins = new CountDownLatch(1);
    CountDownLatch cancelled = new CountDownLatch(1);
    List<String> written = new CopyOnWriteArrayList<>();
    String task =
        tasks
            .begin(
                "write",
                "Writing",
                progress -> {
                  written.add("first");
                  begins.countDown();
                  await(cancelled);
                  progress.at(1, 2);
                  written.add("second");
                  return null;
                })
            .task();
    await(begins);
    assertThat(tasks.cancel(task).state()).isEqualTo("running");
    cancelled.countDown();
    assertThat(ended(task).state()).isEqualTo("cancelled");
    assertThat(written).containsExactly("first");
    assertThat(faults).isEmpty();
  }

  @Test
  void aTaskThatWaitsItsTurnIsCancelledAtOnceAndNeverBegins() {
    CountDownLatch open = new CountDownLatch(1);
    List<String> begun = new CopyOnWriteArrayList<>();
    tasks.begin("one", "One", progress -> waitFor(open));
    tasks.begin("two", "Two", progress -> waitFor(open));
    String third =
        tasks
            .begin(
                "three",
                "Three",
                progress -> {
                  begun.add("three");
                  return null;
                })
            .task();
    assertThat(tasks.cancel(third).state()).isEqualTo("cancelled");
    open.countDown();
    String last = tasks.begin("four", "Four", progress -> "done").task();
    assertThat(ended(last).outcome()).isEqualTo("done");
    assertThat(tasks.of(third).state()).isEqualTo("cancelled");
    assertThat(begun).isEmpty();
  }

  @Test
  void twoWhoWantTheSameShareOneTask() {
    CountDownLatch open = new CountDownLatch(1);
    Tasks.TaskView first = tasks.begin("search", "Reading", progress -> waitFor(open));
    Tasks.TaskView second = tasks.begin("search", "Reading", progress -> waitFor(open));
    assertThat(second.task()).isEqualTo(first.task());
    open.countDown();
    ended(first.task());
    assertThat(tasks.begin("search", "Reading", progress -> null).task())
        .isNotEqualTo(first.task());
  }

  @Test
  void aRefusalReachesThePageAndAFaultIsReported() {
    String refused =
        tasks
            .begin(
                "refuse",
                "Refusing",
                progress -> {
                  throw new Refusal(Refusal.Reason.INVALID, "photo", "No picture.", "Another.");
                })
            .task();
    assertThat(ended(refused).failure().sentence()).isEqualTo("No picture.");
    assertThat(faults).isEmpty();
    String broken =
        tasks
            .begin(
                "break",
                "Breaking",
                progress -> {
                  throw new IllegalStateException("secret");
                })
            .task();
    assertThat(ended(broken).failure().reason()).isEqualTo("fault");
    assertThat(ended(broken).failure().toString()).doesNotContain("secret");
    assertThat(faults).hasSize(1);
  }

  @Test
  void oldTasksAreForgottenButNoneThatGoesOn() {
    CountDownLatch open = new CountDownLatch(1);
    String going = tasks.begin("going", "Going on", progress -> waitFor(open)).task();
    String first = tasks.begin("first", "First", progress -> null).task();
    ended(first);
    for (int each = 0; each < 200; each++) {
      ended(tasks.begin("each", "Each", progress -> null).task());
    }
    assertThatThrownBy(() -> tasks.of(first)).isInstanceOf(Refusal.class);
    assertThat(tasks.of(going).state()).isEqualTo("running");
    open.countDown();
  }

  @Test
  void theViewerAnswersForItsTasks() {
    Viewer viewer = RunningBench.EMPTY.viewer();
    assertThat(Asking.get(viewer, "/api/task?task=none").statusCode()).isEqualTo(404);
    assertThat(Asking.get(viewer, "/api/task").statusCode()).isEqualTo(422);
  }

  private static Object waitFor(CountDownLatch latch) {
    await(latch);
    return null;
  }

  private static void await(CountDownLatch latch) {
    try {
      assertThat(latch.await(SECONDS, TimeUnit.SECONDS)).isTrue();
    } catch (InterruptedException e) {
      throw new IllegalStateException(e);
    }
  }

  /** Asks until it has ended, as a page does. */
  private Tasks.TaskView ended(String task) {
    Semaphore never = new Semaphore(0);
    for (int tries = 0; tries < 100 * SECONDS; tries++) {
      Tasks.TaskView view = tasks.of(task);
      if (view.ended()) {
        return view;
      }
      try {
        never.tryAcquire(10, TimeUnit.MILLISECONDS);
      } catch (InterruptedException e) {
        throw new IllegalStateException(e);
      }
    }
    throw new AssertionError("the task " + task + " has not ended");
  }
}
