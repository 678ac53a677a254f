package io.ovenmark.change;

import io.ovenmark.json.CanonicalJson;
import io.ovenmark.json.JsonValue;
import io.ovenmark.json.JsonValue.JsonArray;
import io.ovenmark.json.JsonValue.JsonNumber;
import io.ovenmark.json.JsonValue.JsonObject;
import io.ovenmark.json.JsonValue.JsonString;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Stream;

/**
 * Brings two versions of a JSON document together that come from the same one, by the form of its
 * parts, down to single values:
 *
 * <ul>
 *   <li>objects member by member; one that has a number {@code touched} on both sides is taken
 *       whole from the side that touched it last;
 *   <li>lists of objects that each have a name of their own ({@code key}, {@code id}, {@code name},
 *       {@code file} or {@code piece}) by that name; one that was added on both sides stands once
 *       when it is the same, and is a conflict otherwise;
 *   <li>lists of different texts as sets, so that both sides may add and remove;
 *   <li>other lists place by place, with what each side added at the end behind, ours and theirs in
 *       an order that does not depend on which side is ours; the same addition on both sides counts
 *       once. A list that became shorter is one value.
 * </ul>
 *
 * <p>Order is never a conflict: see {@link OrderMerge}.
 */
final class DocumentMerge {
  private static final List<String> NAMES = List.of("key", "id", "name", "file", "piece");
  private static final String TOUCHED = "touched";

  private final Pick pick;
  private final Function<String, String> words;

  /**
   * What becomes of two documents.
   *
   * @param document the merged one, with ours at each open conflict
   * @param conflicts what is open
   */
  record Outcome(JsonObject document, List<Conflict> conflicts) {}

  private DocumentMerge(Pick pick, Function<String, String> words) {
    this.pick = pick;
    this.words = words;
  }

  /**
   * Merges.
   *
   * @param sides the document before, and the two that came of it
   * @param chosen which side to take at a conflict, by path
   * @param words what the value at a path is called within a sentence
   */
  static Outcome merge(
      Three<JsonObject> sides, Map<String, Choice> chosen, Function<String, String> words) {
    Pick pick = new Pick(chosen);
    JsonObject merged = new DocumentMerge(pick, words).object("", sides);
    return new Outcome(merged, List.copyOf(pick.open()));
  }

  private Optional<JsonValue> value(String path, Three<Optional<JsonValue>> sides) {
    if (sides.ours().equals(sides.theirs()) || sides.base().equals(sides.theirs())) {
      return sides.ours();
    }
    if (sides.base().equals(sides.ours())) {
      return sides.theirs();
    }
    Optional<Optional<JsonValue>> parts =
        areLists(sides) ? lists(path, sides) : objects(path, sides);
    if (parts.isPresent()) {
      return parts.get();
    }
    return pick.value(path, words.apply(path), sides, side -> side.map(DocumentMerge::text));
  }

  private static boolean areLists(Three<Optional<JsonValue>> sides) {
    return Stream.of(sides.base(), sides.ours(), sides.theirs())
        .flatMap(Optional::stream)
        .allMatch(JsonArray.class::isInstance);
  }

  /** Merges item by item; empty when the list must be taken whole. One not there has no items. */
  private Optional<Optional<JsonValue>> lists(String path, Three<Optional<JsonValue>> sides) {
    Three<List<JsonValue>> lists =
        sides.map(side -> side.map(list -> ((JsonArray) list).items()).orElse(List.of()));
    boolean mayBeAbsent = sides.ours().isEmpty() || sides.theirs().isEmpty();
    Optional<Function<JsonValue, String>> name = naming(lists);
    Optional<List<JsonValue>> items =
        name.isPresent() ? Optional.of(named(path, lists, name.get())) : places(path, lists);
    return items.map(
        all ->
            mayBeAbsent && all.isEmpty() ? Optional.empty() : Optional.of(new JsonArray(all)));
  }

  /** Merges member by member; empty when the object must be taken whole. */
  private Optional<Optional<JsonValue>> objects(String path, Three<Optional<JsonValue>> sides) {
    if (!(sides.ours().orElse(null) instanceof JsonObject ours)
        || !(sides.theirs().orElse(null) instanceof JsonObject theirs)) {
      return Optional.empty();
    }
    Optional<JsonValue> last = lastTouched(ours, theirs);
    if (last.isPresent()) {
      return Optional.of(last);
    }
    return sides.base().orElse(null) instanceof JsonObject base
        ? Optional.of(Optional.of(object(path + ".", new Three<>(base, ours, theirs))))
        : Optional.empty();
  }

  private static Optional<JsonValue> lastTouched(JsonObject ours, JsonObject theirs) {
    Optional<BigDecimal> first = touched(ours);
    Optional<BigDecimal> second = touched(theirs);
    if (first.isEmpty() || second.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(first.get().compareTo(second.get()) >= 0 ? ours : theirs);
  }

  private static Optional<BigDecimal> touched(JsonObject object) {
    return object.members().get(TOUCHED) instanceof JsonNumber number
        ? Optional.of(number.value())
        : Optional.empty();
  }

  private JsonObject object(String prefix, Three<JsonObject> sides) {
    Set<String> names = new LinkedHashSet<>(sides.ours().members().keySet());
    names.addAll(sides.theirs().members().keySet());
    Map<String, JsonValue> members = new LinkedHashMap<>();
    for (String name : names) {
      Three<Optional<JsonValue>> member =
          sides.map(side -> Optional.ofNullable(side.members().get(name)));
      value(prefix + name, member).ifPresent(value -> members.put(name, value));
    }
    return new JsonObject(members);
  }

  /** How the items of a list are named; empty when they are not. */
  private static Optional<Function<JsonValue, String>> naming(Three<List<JsonValue>> lists) {
    List<List<JsonValue>> all = List.of(lists.base(), lists.ours(), lists.theirs());
    if (all.stream().allMatch(list -> areUnique(list, DocumentMerge::ownText))) {
      return Optional.of(item -> ownText(item).orElseThrow());
    }
    for (String name : NAMES) {
      Function<JsonValue, Optional<String>> named = item -> member(item, name);
      if (all.stream().allMatch(list -> areUnique(list, named))) {
        return Optional.of(item -> named.apply(item).orElseThrow());
      }
    }
    return Optional.empty();
  }

  private static boolean areUnique(
      List<JsonValue> list, Function<JsonValue, Optional<String>> name) {
    Set<String> seen = new HashSet<>();
    return list.stream().allMatch(item -> name.apply(item).filter(seen::add).isPresent());
  }

  private static Optional<String> ownText(JsonValue item) {
    return item instanceof JsonString text ? Optional.of(text.value()) : Optional.empty();
  }

  private static Optional<String> member(JsonValue item, String name) {
    return item instanceof JsonObject object
            && object.members().get(name) instanceof JsonString text
        ? Optional.of(text.value())
        : Optional.empty();
  }

  private List<JsonValue> named(
      String path, Three<List<JsonValue>> lists, Function<JsonValue, String> name) {
    Three<Map<String, JsonValue>> byName =
        lists.map(
            list -> {
              Map<String, JsonValue> items = new LinkedHashMap<>();
              list.forEach(item -> items.put(name.apply(item), item));
              return items;
            });
    // An order of asking that does not depend on which side is ours.
    Set<String> names = new LinkedHashSet<>(byName.base().keySet());
    Set<String> added = new TreeSet<>(byName.ours().keySet());
    added.addAll(byName.theirs().keySet());
    names.addAll(added);
    Map<String, JsonValue> kept = new HashMap<>();
    for (String each : names) {
      value(path + "." + each, byName.map(items -> Optional.ofNullable(items.get(each))))
          .ifPresent(item -> kept.put(each, item));
    }
    Three<List<String>> orders = byName.map(items -> List.copyOf(items.keySet()));
    List<String> order = OrderMerge.of(orders, kept.keySet()).ids();
    return order.stream().map(kept::get).toList();
  }

  private Optional<List<JsonValue>> places(String path, Three<List<JsonValue>> lists) {
    int common = lists.base().size();
    if (lists.ours().size() < common || lists.theirs().size() < common) {
      return Optional.empty();
    }
    List<JsonValue> items = new ArrayList<>();
    for (int i = 0; i < common; i++) {
      int place = i;
      value(path + "." + i, lists.map(list -> Optional.of(list.get(place))))
          .ifPresent(items::add);
    }
    List<JsonValue> ours = lists.ours().subList(common, lists.ours().size());
    List<JsonValue> theirs = lists.theirs().subList(common, lists.theirs().size());
    boolean once = ours.equals(theirs);
    boolean oursFirst =
        Comparator.<String>naturalOrder()
                .compare(text(new JsonArray(ours)), text(new JsonArray(theirs)))
            <= 0;
    items.addAll(oursFirst ? ours : theirs);
    items.addAll(once ? List.of() : oursFirst ? theirs : ours);
    return Optional.of(items);
  }

  /** A value in words for a person who chooses. */
  private static String text(JsonValue value) {
    if (value instanceof JsonString string) {
      return string.value();
    }
    if (value instanceof JsonArray array) {
      return String.join(", ", array.items().stream().map(DocumentMerge::text).toList());
    }
    if (value instanceof JsonObject object) {
      List<String> parts = new ArrayList<>();
      object.members().forEach((name, part) -> parts.add(name + ": " + text(part)));
      return String.join("; ", parts);
    }
    return CanonicalJson.text(value).strip();
  }
}
