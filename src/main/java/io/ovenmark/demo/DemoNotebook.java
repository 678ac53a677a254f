package io.ovenmark.demo;

import io.ovenmark.bake.Bake;
import io.ovenmark.notebook.Address;
import io.ovenmark.notebook.By;
import io.ovenmark.notebook.CarryOutcome;
import io.ovenmark.notebook.FormulaWriter;
import io.ovenmark.notebook.Notebook;
import io.ovenmark.notebook.NotebookSettings;
import io.ovenmark.notebook.RecordWriter;
import io.ovenmark.notebook.ReviseOutcome;
import io.ovenmark.notebook.Revision;
import io.ovenmark.notebook.Tastings;
import io.ovenmark.notebook.VariantWriter;
import io.ovenmark.notebook.store.Author;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.Executor;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.stream.Collectors;

/**
 * Builds the demo notebook by doing what the script tells, with the same verbs that a person uses:
 * the history is real, and the same script gives the same commits.
 *
 * <pre>{@code
 * DemoNotebook.create(folder, (done, total) -> {});
 * }</pre>
 */
public final class DemoNotebook {

  /** Is told how far the building has come. */
  @FunctionalInterface
  public interface Progress {
    /**
     * A step was done.
     *
     * @param done steps done
     * @param total all steps
     */
    void step(int done, int total);
  }

  private final Notebook notebook;
  private final FormulaWriter formulas;
  private final VariantWriter variants;
  private final RecordWriter records;
  private final Map<String, CompletableFuture<byte[]>> pictures;

  private DemoNotebook(Notebook notebook, Map<String, CompletableFuture<byte[]>> pictures) {
    this.notebook = notebook;
    this.formulas = new FormulaWriter(notebook);
    this.variants = new VariantWriter(notebook);
    this.records = new RecordWriter(notebook);
    this.pictures = pictures;
  }

  /**
   * Builds the demo in a folder.
   *
   * @param folder an empty or missing folder
   * @param progress is told how far it has come
   * @throws io.ovenmark.notebook.Refusal when there is a notebook already
   */
  public static void create(Path folder, Progress progress) {
    DemoScript script = DemoScript.load();
    List<DemoEvent> events = script.events();
    By first = by(events.get(0).at());
    ExecutorService painters =
        Executors.newFixedThreadPool(Runtime.getRuntime().availableProcessors());
    try (Notebook notebook =
        Notebook.create(folder, NotebookSettings.titled(script.title()), first)) {
      DemoNotebook demo = new DemoNotebook(notebook, draw(events, painters));
      for (int i = 0; i < events.size(); i++) {
        demo.apply(events.get(i));
        progress.step(i + 1, events.size());
      }
    } finally {
      painters.shutdownNow();
    }
  }

  /** Begins to draw all pictures, in the order in which they will be wanted. */
  private static Map<String, CompletableFuture<byte[]>> draw(
      List<DemoEvent> events, Executor painters) {
    return events.stream()
        .filter(DemoEvent.BakeRecorded.class::isInstance)
        .flatMap(event -> ((DemoEvent.BakeRecorded) event).pictures().stream())
        .collect(
            Collectors.toMap(
                DemoPicture::file,
                picture -> CompletableFuture.supplyAsync(picture::draw, painters)));
  }

  private void apply(DemoEvent event) {
    By by = by(event.at());
    String note = event.at().note();
    if (event instanceof DemoEvent.GoalSet e) {
      records.saveGoal(e.goal(), notebook.latest().goal(e.goal().slug()), note, by);
    } else if (event instanceof DemoEvent.FoodEntered e) {
      records.saveFood(e.food(), notebook.latest().food(e.food().slug()), note, by);
    } else if (event instanceof DemoEvent.FormulaBegun e) {
      expect(e.address(), formulas.create(e.address().formula(), e.formula(), note, by).revision());
    } else if (event instanceof DemoEvent.FormulaRevised e) {
      Revision newest = notebook.newest(line(e.address()));
      expect(e.address(), saved(formulas.revise(newest, e.formula(), note, by)));
    } else if (event instanceof DemoEvent.VariantOpened e) {
      variants.fork(notebook.revision(address(e.from())), e.name(), Optional.empty(), note, by);
    } else if (event instanceof DemoEvent.ImprovementsCarried e) {
      CarryOutcome outcome = variants.carry(line(e.address()), Map.of(), note, by);
      if (!(outcome instanceof CarryOutcome.Carried carried)) {
        throw new IllegalStateException("the demo's carry is undecided: " + outcome);
      }
      expect(e.address(), carried.revision());
    } else if (event instanceof DemoEvent.RevisionRestored e) {
      Revision earlier = notebook.revision(address(e.from()));
      expect(e.address(), saved(formulas.restore(earlier, line(e.address()), note, by)));
    } else if (event instanceof DemoEvent.BakeRecorded e) {
      record(e, by);
    } else if (event instanceof DemoEvent.TastingHeld e) {
      new Tastings(notebook).add(e.tasting(), note, by);
    } else if (event instanceof DemoEvent.RevisionPublished e) {
      records.publish(notebook.revision(address(e.address())), note, by);
    }
  }

  private void record(DemoEvent.BakeRecorded event, By by) {
    Bake bake = event.bake();
    Revision baked = notebook.revision(address(event.address()));
    if (!baked.blob().hex().equals(bake.blob())) {
      throw new IllegalStateException(bake.path() + " was not weighed from " + event.address());
    }
    Map<String, byte[]> files = new HashMap<>();
    for (DemoPicture picture : event.pictures()) {
      files.put(picture.file(), pictures.get(picture.file()).join());
    }
    records.addBake(line(event.address()), bake, files, event.at().note(), by);
  }

  private static Revision saved(ReviseOutcome outcome) {
    if (outcome instanceof ReviseOutcome.Saved saved) {
      return saved.revision();
    }
    throw new IllegalStateException("the demo's revision was not saved: " + outcome);
  }

  private static void expect(DemoAddress told, Revision made) {
    if (!made.address().equals(address(told))) {
      throw new IllegalStateException("the demo tells of " + told + " but made " + made.address());
    }
  }

  private static Address line(DemoAddress address) {
    return Address.latest(address.formula(), address.variant());
  }

  private static Address address(DemoAddress address) {
    return line(address).at(address.revision());
  }

  private static By by(DemoEvent.Moment moment) {
    return new By(
        new Author(moment.author().name(), moment.author().email()), moment.time());
  }
}
