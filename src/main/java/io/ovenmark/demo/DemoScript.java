package io.ovenmark.demo;

import static java.util.Objects.requireNonNull;

import io.ovenmark.json.UnreadableException;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * The demo as a list of events, from the first goal to the last published revision. The files are
 * in the project's folder {@code formulas/}; {@code timeline.json} there says what happened when
 * and names all others.
 *
 * <pre>{@code
 * for (DemoEvent event : DemoScript.load().events()) {
 *   if (event instanceof DemoEvent.FormulaRevised revised) {
 *     notebook.revise(revised.address().line(), revised.formula(), revised.at().note());
 *   }
 * }
 * }</pre>
 *
 * @param title what the demo's notebook is called
 * @param about what it is, in a few sentences with the cautions that belong to it
 * @param events what happened, in order of time
 */
public record DemoScript(String title, String about, List<DemoEvent> events) {
  /** Name of the file that orders all others. */
  public static final String TIMELINE = "timeline.json";

  /** Copies the list. */
  public DemoScript {
    requireNonNull(title, "title");
    requireNonNull(about, "about");
    events = List.copyOf(events);
  }

  /**
   * Reads the demo that comes with the program.
   *
   * @return the demo
   * @throws UnreadableException when its files are damaged
   */
  public static DemoScript load() {
    return read(DemoScript::resource);
  }

  /**
   * Reads a demo from other files.
   *
   * @param files gives the bytes of a file by its path below {@code formulas/}, empty when there is
   *     none
   * @return the demo
   * @throws UnreadableException with everything that is wrong with a file
   */
  public static DemoScript read(Function<String, Optional<byte[]>> files) {
    return new DemoScriptReader(files).read();
  }

  private static Optional<byte[]> resource(String path) {
    try (InputStream in = DemoScript.class.getResourceAsStream(path)) {
      return in == null ? Optional.empty() : Optional.of(in.readAllBytes());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
