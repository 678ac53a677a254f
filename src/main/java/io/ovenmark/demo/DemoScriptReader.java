package io.ovenmark.demo;

import io.ovenmark.bake.Bake;
import io.ovenmark.bake.BakeCodec;
import io.ovenmark.bake.Photo;
import io.ovenmark.demo.DemoEvent.Moment;
import io.ovenmark.demo.DemoEvent.Person;
import io.ovenmark.formula.Formula;
import io.ovenmark.formula.FormulaCodec;
import io.ovenmark.goal.GoalCodec;
import io.ovenmark.json.CanonicalJson;
import io.ovenmark.json.Fields;
import io.ovenmark.json.JsonReader;
import io.ovenmark.json.JsonValue;
import io.ovenmark.json.Position;
import io.ovenmark.json.Problem;
import io.ovenmark.json.UnreadableException;
import io.ovenmark.measure.Slug;
import io.ovenmark.pantry.FoodCodec;
import io.ovenmark.tasting.TastingCodec;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.OffsetDateTime;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;

/**
 * Reads {@code timeline.json} event by event and keeps book of what exists by then, so that an
 * event that refers to something later or to nothing is refused with its line.
 */
final class DemoScriptReader {
  private static final List<String> VERBS =
      List.of(
          "goal",
          "pantry",
          "new",
          "revise",
          "variant",
          "carry",
          "restore",
          "bake",
          "tasting",
          "publish");

  private final Function<String, Optional<byte[]>> files;
  private final Map<String, Person> people = new LinkedHashMap<>();
  private final Map<DemoAddress, Formula> formulas = new LinkedHashMap<>();
  private final Map<String, Integer> latest = new LinkedHashMap<>();
  private final Set<String> goals = new HashSet<>();
  private Optional<OffsetDateTime> before = Optional.empty();

  DemoScriptReader(Function<String, Optional<byte[]>> files) {
    this.files = files;
  }

  DemoScript read() {
    Fields fields = Fields.of(DemoScript.TIMELINE, bytes(DemoScript.TIMELINE));
    Optional<String> title = fields.requiredText("title");
    Optional<String> about = fields.requiredText("about");
    fields.object("people").ifPresent(this::people);
    List<DemoEvent> events = fields.objects("events", this::event);
    fields.finish();
    return new DemoScript(title.orElseThrow(), about.orElseThrow(), events);
  }

  private void people(Fields fields) {
    for (String key : fields.names()) {
      fields
          .object(key)
          .ifPresent(
              person ->
                  people.put(
                      key,
                      new Person(
                          person.requiredText("name").orElse(key),
                          person.requiredText("email").orElse(key))));
    }
  }

  private Optional<DemoEvent> event(Fields fields) {
    List<String> verbs = VERBS.stream().filter(fields::has).toList();
    // a variant names its goal beside it
    String verb = verbs.contains("variant") ? "variant" : verbs.isEmpty() ? "" : verbs.get(0);
    if (verb.isEmpty() || verbs.size() > (verb.equals("variant") ? 2 : 1)) {
      fields.problem(
          "",
          "The event does not say one thing.",
          "Give it one of " + String.join(", ", VERBS) + ".");
      return Optional.empty();
    }
    try {
      Moment at = moment(fields);
      String subject = text(fields, verb);
      return Optional.of(
          switch (verb) {
            case "goal" -> goal(fields, at, subject);
            case "pantry" -> new DemoEvent.FoodEntered(
                at, FoodCodec.read(file(fields), Slug.check(subject), bytes(file(fields))));
            case "new" -> begun(fields, at, subject);
            case "revise" -> revised(fields, at, subject);
            case "variant" -> variant(fields, at, subject);
            case "carry" -> carried(fields, at, subject);
            case "restore" -> restored(fields, at, subject);
            case "bake" -> baked(fields, at, subject);
            case "tasting" -> tasted(fields, at, subject);
            default -> new DemoEvent.RevisionPublished(at, known(subject));
          });
    } catch (UnreadableException e) {
      throw e;
    } catch (IllegalArgumentException e) {
      String[] parts = String.valueOf(e.getMessage()).split("\n", 2);
      fields.problem(verb, parts[0], parts.length > 1 ? parts[1] : "Correct the event.");
      return Optional.empty();
    }
  }

  private Moment moment(Fields fields) {
    OffsetDateTime time;
    try {
      time = OffsetDateTime.parse(text(fields, "time"));
    } catch (DateTimeParseException e) {
      throw bad("The time of the event is not a date and time.", "Write it as in ISO 8601.", e);
    }
    if (before.filter(time::isBefore).isPresent()) {
      throw bad("The event lies before the one above it.", "Keep the events in order of time.");
    }
    before = Optional.of(time);
    Person author = people.get(text(fields, "author"));
    if (author == null) {
      throw bad("The author is not one of the people.", "Add the author to people.");
    }
    return new Moment(time, author, text(fields, "note"));
  }

  private DemoEvent goal(Fields fields, Moment at, String slug) {
    goals.add(slug);
    return new DemoEvent.GoalSet(at, GoalCodec.read(file(fields), slug, bytes(file(fields))));
  }

  private DemoEvent begun(Fields fields, Moment at, String slug) {
    if (latest.containsKey(slug)) {
      throw bad("The formula " + slug + " exists already.", "Use revise.");
    }
    latest.put(slug, 0);
    DemoAddress address = next(slug);
    return new DemoEvent.FormulaBegun(at, address, formula(fields, address));
  }

  private DemoEvent revised(Fields fields, Moment at, String line) {
    DemoAddress address = next(line);
    return new DemoEvent.FormulaRevised(at, address, formula(fields, address));
  }

  private DemoEvent variant(Fields fields, Moment at, String line) {
    DemoAddress from = known(text(fields, "from"));
    String goal = text(fields, "goal");
    if (!goals.contains(goal)) {
      throw bad("There is no goal " + goal + " yet.", "Set the goal before the variant.");
    }
    String name = line.substring(line.indexOf('/') + 1);
    boolean ofThatFormula = line.equals(from.formula() + "/" + name);
    if (!ofThatFormula || latest.putIfAbsent(line, from.revision()) != null) {
      throw bad(
          "The variant " + line + " cannot be opened from " + from + ".",
          "Write formula/name with a name that is free.");
    }
    return new DemoEvent.VariantOpened(at, from, Slug.check(name), goal);
  }

  private DemoEvent carried(Fields fields, Moment at, String line) {
    DemoAddress from = known(text(fields, "from"));
    DemoAddress address = next(line);
    return new DemoEvent.ImprovementsCarried(at, from, address, formula(fields, address));
  }

  private DemoEvent restored(Fields fields, Moment at, String line) {
    DemoAddress from = known(text(fields, "from"));
    DemoAddress address = next(line);
    formulas.put(address, formulas.get(from));
    return new DemoEvent.RevisionRestored(at, from, address, formulas.get(from));
  }

  private DemoEvent baked(Fields fields, Moment at, String subject) {
    DemoAddress address = known(subject);
    PieceShape shape = shape(text(fields, "shape"));
    String file = file(fields);
    String id = file.substring(file.lastIndexOf('/') + 1).replaceAll("\\.json$", "");
    Bake bake = bake(file, id, address);
    List<Photo> photos = new ArrayList<>();
    List<DemoPicture> pictures = new ArrayList<>();
    for (Photo photo : bake.photos()) {
      DemoPicture picture = DemoPicture.of(photo, bake, shape);
      photos.add(photo.withMarks(picture.marks()));
      pictures.add(picture);
    }
    return new DemoEvent.BakeRecorded(at, address, bake.withPhotos(photos), pictures);
  }

  /** The file leaves out what follows from the timeline: the address and the blob id. */
  private Bake bake(String file, String id, DemoAddress address) {
    Map<String, JsonValue> members = new LinkedHashMap<>();
    members.put("address", new JsonValue.JsonString(address.toString()));
    byte[] weighed = FormulaCodec.write(formulas.get(address));
    members.put("blob", new JsonValue.JsonString(blobId(weighed)));
    byte[] written = bytes(file);
    if (!(JsonReader.read(file, written) instanceof JsonValue.JsonObject object)) {
      throw bad("The file " + file + " holds no object.", "Begin it with {.");
    }
    members.putAll(object.members());
    byte[] whole = CanonicalJson.write(new JsonValue.JsonObject(members));
    return BakeCodec.read(file, address.formula(), id, whole);
  }

  /** The file leaves out the blob ids of the samples, which follow from the timeline. */
  private DemoEvent tasted(Fields fields, Moment at, String formula) {
    String file = file(fields);
    String id = file.substring(file.lastIndexOf('/') + 1).replaceAll("\\.json$", "");
    if (!(JsonReader.read(file, bytes(file)) instanceof JsonValue.JsonObject object)
        || !(object.members().get("samples") instanceof JsonValue.JsonArray samples)) {
      throw bad("The file " + file + " names no samples.", "Give it a list of samples.");
    }
    Map<String, JsonValue> members = new LinkedHashMap<>(object.members());
    List<JsonValue> named = samples.items().stream().map(this::sample).toList();
    members.put("samples", new JsonValue.JsonArray(named));
    byte[] whole = CanonicalJson.write(new JsonValue.JsonObject(members));
    return new DemoEvent.TastingHeld(
        at, TastingCodec.read(file, Slug.check(formula), id, whole));
  }

  private JsonValue sample(JsonValue value) {
    if (!(value instanceof JsonValue.JsonObject object)
        || !(object.members().get("address") instanceof JsonValue.JsonString address)) {
      throw bad("A sample names no revision.", "Give it an address.");
    }
    Map<String, JsonValue> members = new LinkedHashMap<>(object.members());
    byte[] weighed = FormulaCodec.write(formulas.get(known(address.value())));
    members.put("blob", new JsonValue.JsonString(blobId(weighed)));
    return new JsonValue.JsonObject(members);
  }

  private Formula formula(Fields fields, DemoAddress address) {
    String file = file(fields);
    String expected =
        address.line() + "/" + String.format(Locale.ROOT, "%02d", address.revision()) + ".json";
    if (!file.equals(expected)) {
      throw bad("The file " + file + " cannot hold " + address + ".", "Name it " + expected + ".");
    }
    Formula formula = FormulaCodec.read(file, bytes(file));
    formulas.put(address, formula);
    return formula;
  }

  private DemoAddress next(String line) {
    Integer number = latest.get(line);
    if (number == null) {
      throw bad("There is no " + line + " yet.", "Begin it with new or variant.");
    }
    latest.put(line, number + 1);
    return DemoAddress.parse(line + "@" + (number + 1));
  }

  private DemoAddress known(String text) {
    DemoAddress address = DemoAddress.parse(text);
    if (!formulas.containsKey(address)) {
      throw bad("There is no revision " + address + " yet.", "Name one from above.");
    }
    return address;
  }

  private String file(Fields fields) {
    return text(fields, "file");
  }

  private byte[] bytes(String path) {
    return files
        .apply(path)
        .orElseThrow(
            () ->
                new UnreadableException(
                    List.of(
                        new Problem(
                            path,
                            Position.NONE,
                            "",
                            "The file is missing.",
                            "Restore it or take the event that names it out."))));
  }

  private static PieceShape shape(String word) {
    return PieceShape.withWord(word)
        .orElseThrow(
            () -> bad("\"" + word + "\" is not a shape.", "Use round, rectangle or cup."));
  }

  private static String text(Fields fields, String name) {
    return fields
        .text(name)
        .orElseThrow(() -> bad("The event has no " + name + ".", "Add \"" + name + "\"."));
  }

  /** The id that Git gives to a file of these bytes. */
  private static String blobId(byte[] bytes) {
    try {
      MessageDigest digest = MessageDigest.getInstance("SHA-1");
      digest.update(("blob " + bytes.length + "\0").getBytes(StandardCharsets.UTF_8));
      return HexFormat.of().formatHex(digest.digest(bytes));
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java platform has SHA-1", e);
    }
  }

  private static IllegalArgumentException bad(String message, String hint) {
    return new IllegalArgumentException(message + "\n" + hint);
  }

  private static IllegalArgumentException bad(String message, String hint, Exception cause) {
    return new IllegalArgumentException(message + "\n" + hint, cause);
  }
}
