package io.ovenmark.json;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Function;

/**
 * Reads the members of one object and gathers what is wrong with them, so that one look tells a
 * person everything that must be mended. A faulty field is reported and read as absent; call {@link
 * #finish} at the end of the outermost object to refuse the file when anything was reported.
 *
 * <pre>{@code
 * Fields fields = Fields.of("formulas/lupin-bun.json", bytes);
 * String name = fields.text("name").orElse("");
 * Extras extras = fields.extras();
 * fields.finish();
 * }</pre>
 */
public final class Fields {
  private final String file;
  private final String path;
  private final JsonValue.JsonObject object;
  private final List<Problem> problems;
  private final Set<String> known = new LinkedHashSet<>();
  private final Map<String, Fields> inner = new LinkedHashMap<>();

  private Fields(String file, String path, JsonValue.JsonObject object, List<Problem> problems) {
    this.file = file;
    this.path = path;
    this.object = object;
    this.problems = problems;
  }

  /**
   * Opens the outermost object of a file.
   *
   * @param file the name used in messages
   * @param utf8 the bytes
   * @return its fields
   * @throws UnreadableException when the text is not a JSON object
   */
  public static Fields of(String file, byte[] utf8) {
    JsonValue value = JsonReader.read(file, utf8);
    if (value instanceof JsonValue.JsonObject object) {
      return new Fields(file, "", object, new ArrayList<>());
    }
    throw new UnreadableException(
        List.of(
            new Problem(
                file,
                value.at(),
                "",
                "The file holds " + Wording.inWords(value) + " where an object in { } belongs.",
                "Begin the file with { and end it with }.")));
  }

  /**
   * A required text that is not blank.
   *
   * @param name the field
   * @return the text, empty when it was reported as missing or of the wrong type
   */
  public Optional<String> requiredText(String name) {
    Optional<String> text = text(name);
    if (text.isEmpty() && !reported(name)) {
      problem(name, "The field is missing.", "Add \"" + name + "\" with a text.");
    } else if (text.isPresent() && text.get().isBlank()) {
      problem(name, "The text is empty.", "Write something or use a placeholder.");
      return Optional.empty();
    }
    return text;
  }

  /**
   * An optional text.
   *
   * @param name the field
   * @return the text; empty when absent, null or of the wrong type (reported)
   */
  public Optional<String> text(String name) {
    JsonValue value = member(name);
    if (value instanceof JsonValue.JsonString string) {
      return Optional.of(string.value());
    }
    wrongType(name, value, "a text in quotes");
    return Optional.empty();
  }

  /**
   * An optional text that must parse.
   *
   * @param <T> what it becomes
   * @param name the field
   * @param parse throws {@link IllegalArgumentException} with a sentence and, after a line break, a
   *     remedy
   * @return the value; empty when absent or faulty (reported)
   */
  public <T> Optional<T> parsed(String name, Function<String, T> parse) {
    Optional<String> text = text(name);
    if (text.isEmpty()) {
      return Optional.empty();
    }
    try {
      return Optional.of(parse.apply(text.get()));
    } catch (IllegalArgumentException e) {
      problem(name, e);
      return Optional.empty();
    }
  }

  /**
   * An optional exact number.
   *
   * @param name the field
   * @return the number; empty when absent, null or of the wrong type (reported)
   */
  public Optional<BigDecimal> decimal(String name) {
    JsonValue value = member(name);
    if (value instanceof JsonValue.JsonNumber number) {
      return Optional.of(number.value());
    }
    wrongType(name, value, "a number without quotes");
    return Optional.empty();
  }

  /**
   * An optional number within limits.
   *
   * @param name the field
   * @param least least value allowed
   * @param most greatest value allowed
   * @return the number; empty when absent, null or faulty (reported)
   */
  public OptionalDouble number(String name, double least, double most) {
    return within(name, decimal(name), least, most)
        .map(number -> OptionalDouble.of(number.doubleValue()))
        .orElseGet(OptionalDouble::empty);
  }

  /** A number of a field, unless it lies outside of its limits, which is reported. */
  Optional<BigDecimal> within(
      String name, Optional<BigDecimal> number, double least, double most) {
    if (number.isPresent() && !Wording.within(number.get(), least, most)) {
      problem(name, Wording.outOfRange(number.get()), Wording.range(least, most));
      return Optional.empty();
    }
    return number;
  }

  /**
   * An optional whole number within limits.
   *
   * @param name the field
   * @param least least value allowed
   * @param most greatest value allowed
   * @return the number; empty when absent, null or faulty (reported)
   */
  public Optional<Integer> whole(String name, int least, int most) {
    return whole(name, decimal(name), least, most);
  }

  /** A number of a field, unless it is not whole or outside of its limits, which is reported. */
  Optional<Integer> whole(String name, Optional<BigDecimal> decimal, int least, int most) {
    Optional<BigDecimal> number = within(name, decimal, least, most);
    if (number.isPresent() && number.get().stripTrailingZeros().scale() > 0) {
      problem(
          name,
          "The number " + CanonicalJson.number(number.get()) + " is not a whole number.",
          "Round it to a whole number.");
      return Optional.empty();
    }
    return number.map(BigDecimal::intValueExact);
  }

  /**
   * An optional truth.
   *
   * @param name the field
   * @return true or false; false when absent or of the wrong type (reported)
   */
  public boolean flag(String name) {
    JsonValue value = member(name);
    if (value instanceof JsonValue.JsonBoolean bool) {
      return bool.value();
    }
    wrongType(name, value, "true or false");
    return false;
  }

  /**
   * An optional list of objects.
   *
   * @param <T> what each becomes
   * @param name the field
   * @param read reads one; an empty result (after reporting) is left out
   * @return the list; empty when absent
   */
  public <T> List<T> objects(String name, Function<Fields, Optional<T>> read) {
    List<T> result = new ArrayList<>();
    int i = 0;
    for (JsonValue item : items(name)) {
      String itemPath = path(name) + "[" + i++ + "]";
      if (item instanceof JsonValue.JsonObject member) {
        read.apply(new Fields(file, itemPath, member, problems)).ifPresent(result::add);
      } else {
        problems.add(
            new Problem(
                file,
                item.at(),
                itemPath,
                "There is " + Wording.inWords(item) + " where an object in { } belongs.",
                "Write an object in { }."));
      }
    }
    return result;
  }

  /**
   * An optional list of texts.
   *
   * @param name the field
   * @return the texts; empty when absent
   */
  public List<String> texts(String name) {
    List<String> result = new ArrayList<>();
    int i = 0;
    for (JsonValue item : items(name)) {
      if (item instanceof JsonValue.JsonString string) {
        result.add(string.value());
      } else {
        problems.add(
            new Problem(
                file,
                item.at(),
                path(name) + "[" + i + "]",
                "There is " + Wording.inWords(item) + " where a text in quotes belongs.",
                "Put it in quotes."));
      }
      i++;
    }
    return result;
  }

  /**
   * An optional list of numbers within limits.
   *
   * @param name the field
   * @param least least value allowed
   * @param most greatest value allowed
   * @return the numbers; empty when absent
   */
  public List<Double> numbers(String name, double least, double most) {
    List<Double> result = new ArrayList<>();
    int i = 0;
    for (JsonValue item : items(name)) {
      String itemPath = path(name) + "[" + i++ + "]";
      if (!(item instanceof JsonValue.JsonNumber number)) {
        String message =
            "There is " + Wording.inWords(item) + " where a number without quotes belongs.";
        problems.add(new Problem(file, item.at(), itemPath, message, Wording.range(least, most)));
      } else if (!Wording.within(number.value(), least, most)) {
        String message = Wording.outOfRange(number.value());
        problems.add(new Problem(file, item.at(), itemPath, message, Wording.range(least, most)));
      } else {
        result.add(number.value().doubleValue());
      }
    }
    return result;
  }

  /**
   * An optional object.
   *
   * @param name the field
   * @return its fields; empty when absent, null or of the wrong type (reported)
   */
  public Optional<Fields> object(String name) {
    JsonValue value = member(name);
    if (value instanceof JsonValue.JsonObject member) {
      Fields fields = new Fields(file, path(name), member, problems);
      inner.put(name, fields);
      return Optional.of(fields);
    }
    wrongType(name, value, "an object in { }");
    return Optional.empty();
  }

  /**
   * The names of all members, for objects whose names are data, such as nutrients.
   *
   * @return the names in the order read
   */
  public List<String> names() {
    return List.copyOf(object.members().keySet());
  }

  /**
   * Whether the field is present and not null.
   *
   * @param name the field
   * @return true when it has a value, be it of the wrong type
   */
  public boolean has(String name) {
    JsonValue value = object.members().get(name);
    return value != null && !(value instanceof JsonValue.JsonNull);
  }

  /** Whether the field is a text. */
  boolean isText(String name) {
    return object.members().get(name) instanceof JsonValue.JsonString;
  }

  /**
   * The members that nothing has read so far, here and in the objects opened with {@link #object}
   * (but not in lists, whose items keep their own).
   *
   * @return the unknown fields
   */
  public Extras extras() {
    Map<String, JsonValue> unread = new LinkedHashMap<>(object.members());
    unread.keySet().removeAll(known);
    inner.forEach(
        (name, fields) -> {
          Extras nested = fields.extras();
          if (!nested.isEmpty()) {
            unread.put(name, new JsonValue.JsonObject(nested.members()));
          }
        });
    return Extras.of(unread);
  }

  /**
   * Reports a fault of a field of this object.
   *
   * @param name the field; empty text for the object itself
   * @param message one sentence
   * @param hint what to do, one sentence
   */
  public void problem(String name, String message, String hint) {
    JsonValue value = name.isEmpty() ? null : object.members().get(name);
    Position at = value == null ? object.at() : value.at();
    problems.add(new Problem(file, at, path(name), message, hint));
  }

  /**
   * Reports a fault of a field of this object that a record or a parser found.
   *
   * @param name the field; empty text for the object itself
   * @param found carries a sentence and, after its last line break, a remedy
   */
  public void problem(String name, IllegalArgumentException found) {
    String message = String.valueOf(found.getMessage());
    int end = message.lastIndexOf('\n');
    problem(
        name,
        end < 0 ? message : message.substring(0, end),
        end < 0 ? "Correct the value." : message.substring(end + 1));
  }

  /**
   * What has been reported so far, in this object and all around it.
   *
   * @return the faults
   */
  public List<Problem> problems() {
    return List.copyOf(problems);
  }

  /**
   * Ends the reading of a file.
   *
   * @throws UnreadableException when anything was reported, with the faults in file order
   */
  public void finish() {
    if (!problems.isEmpty()) {
      List<Problem> inFileOrder = new ArrayList<>(problems);
      inFileOrder.sort(
          Comparator.comparingInt((Problem problem) -> problem.at().line())
              .thenComparingInt(problem -> problem.at().column()));
      throw new UnreadableException(inFileOrder);
    }
  }

  private List<JsonValue> items(String name) {
    JsonValue value = member(name);
    if (value instanceof JsonValue.JsonArray array) {
      return array.items();
    }
    wrongType(name, value, "a list in [ ]");
    return List.of();
  }

  private JsonValue member(String name) {
    known.add(name);
    JsonValue value = object.members().get(name);
    return value instanceof JsonValue.JsonNull ? null : value;
  }

  private void wrongType(String name, JsonValue value, String wanted) {
    if (value != null) {
      problem(
          name,
          "There is " + Wording.inWords(value) + " where " + wanted + " belongs.",
          "Write " + wanted + ".");
    }
  }

  private boolean reported(String name) {
    String field = path(name);
    return problems.stream().anyMatch(problem -> problem.field().equals(field));
  }

  private String path(String name) {
    if (name.isEmpty()) {
      return path;
    }
    return path.isEmpty() ? name : path + "." + name;
  }
}
