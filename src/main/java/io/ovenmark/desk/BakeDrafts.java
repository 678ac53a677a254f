package io.ovenmark.desk;

import static java.util.Objects.requireNonNull;

import io.ovenmark.change.BakeMerge;
import io.ovenmark.change.Choice;
import io.ovenmark.json.JsonReader;
import io.ovenmark.json.JsonValue;
import io.ovenmark.json.JsonValue.JsonArray;
import io.ovenmark.json.JsonValue.JsonObject;
import io.ovenmark.json.JsonValue.JsonString;
import io.ovenmark.json.UnreadableException;
import io.ovenmark.notebook.By;
import io.ovenmark.notebook.Draft;
import io.ovenmark.notebook.Drafts;
import io.ovenmark.notebook.Refusal;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Keeps bakes that are being typed, from the first letter until they are recorded or thrown away.
 * What was typed into two copies, on the phone by the oven and on the desk, is joined by piece and
 * field.
 *
 * <p>The document is a JSON object of the page's making. Its members {@code formula}, {@code
 * address}, {@code bake} (texts), {@code form.pieces} and {@code timers} are read here for lists;
 * everything in it may be half typed.
 */
public final class BakeDrafts {
  /** The kind of these drafts. */
  static final String KIND = "bake";

  private static final int MOST_TRIES = 8;

  private final Drafts drafts;

  /**
   * What was typed.
   *
   * @param id the draft
   * @param version the version that it was typed into
   * @param base what the draft held at that version, JSON
   * @param document what it holds now, JSON
   * @param choices which side to take where two copies differ, by field
   * @param against the version that the choices were made against; 0 for none
   */
  public record Typed(
      String id,
      long version,
      String base,
      String document,
      Map<String, Choice> choices,
      long against) {
    /** Copies the choices. */
    public Typed {
      requireNonNull(id, "id");
      requireNonNull(base, "base");
      requireNonNull(document, "document");
      choices = Map.copyOf(choices);
    }
  }

  /**
   * Works on a desk.
   *
   * @param desk the desk
   */
  public BakeDrafts(Desk desk) {
    drafts = new Drafts(desk.notebook());
  }

  /**
   * Begins a draft.
   *
   * @param document what was typed so far, JSON
   * @param by who types, and when
   * @return the draft
   * @throws Refusal when the document is no JSON object or too long
   */
  public BakeFormViews.BakeDraft begin(String document, By by) {
    checked(document);
    return view("kept", drafts.begin(KIND, document, by));
  }

  /**
   * A draft.
   *
   * @param id its name
   * @return all that it holds
   * @throws Refusal when there is none any more
   */
  public BakeFormViews.BakeDraft show(String id) {
    return view("kept", find(id));
  }

  /**
   * Keeps what was typed, joined with what was kept elsewhere since.
   *
   * @param typed what was typed
   * @param by who types, and when
   * @return what the draft holds now, or both sides where the same field was typed differently
   * @throws Refusal when there is no such draft any more
   */
  public BakeFormViews.BakeDraft keep(Typed typed, By by) {
    checked(typed.document());
    for (int i = 1; ; i++) {
      Draft draft = find(typed.id());
      if (draft.version() != typed.version()) {
        checked(typed.base());
        Map<String, Choice> choices =
            typed.against() == draft.version() ? typed.choices() : Map.of();
        BakeMerge.MergedText merged =
            BakeMerge.mergeForms(typed.base(), typed.document(), draft.content(), choices);
        if (!merged.conflicts().isEmpty()) {
          return new BakeFormViews.BakeDraft(
              "conflict",
              draft.id(),
              draft.version(),
              Json.time(draft.time()),
              draft.author(),
              draft.content(),
              WriteParts.conflicts(merged.conflicts()));
        }
        Optional<Draft> saved = save(draft, merged.json(), by, i);
        if (saved.isPresent()) {
          return view("merged", saved.get());
        }
      } else {
        Optional<Draft> saved = save(draft, typed.document(), by, i);
        if (saved.isPresent()) {
          return view("kept", saved.get());
        }
      }
    }
  }

  /** Saves; empty when somebody else was quicker, so that it must be joined again. */
  private Optional<Draft> save(Draft draft, String document, By by, int tries) {
    try {
      return Optional.of(drafts.save(draft.id(), draft.version(), document, by));
    } catch (Refusal refusal) {
      if (refusal.reason() != Refusal.Reason.CONFLICT || tries >= MOST_TRIES) {
        throw refusal;
      }
      return Optional.empty();
    }
  }

  /**
   * Throws a draft away.
   *
   * @param id its name
   * @param version the version that was looked at
   * @return what it held, so that it can be begun again
   * @throws Refusal when there is none any more, or it was kept elsewhere since
   */
  public BakeFormViews.BakeDraft discard(String id, long version) {
    find(id);
    return view("kept", drafts.discard(id, version));
  }

  /**
   * The drafts of a formula.
   *
   * @param formula its short name
   * @return those kept last first
   */
  public List<BakeFormViews.Unfinished> of(String formula) {
    return drafts.all(KIND).stream()
        .filter(draft -> text(object(draft), "formula").filter(formula::equals).isPresent())
        .map(BakeDrafts::entry)
        .toList();
  }

  /**
   * Finds a draft for recording.
   *
   * @throws Refusal when there is none any more, or it was kept elsewhere since
   */
  void require(String id, long version) {
    if (find(id).version() != version) {
      throw new Refusal(
          Refusal.Reason.CONFLICT,
          id,
          "This bake was typed into elsewhere meanwhile.",
          "Look at what was added there, then record it.");
    }
  }

  private Draft find(String id) {
    return drafts
        .find(id)
        .filter(draft -> draft.kind().equals(KIND))
        .orElseThrow(
            () ->
                new Refusal(
                    Refusal.Reason.NOT_FOUND,
                    id,
                    "There is no such unfinished bake any more.",
                    "It was recorded or thrown away elsewhere; see the bakes of its formula."));
  }

  private static BakeFormViews.BakeDraft view(String outcome, Draft draft) {
    return new BakeFormViews.BakeDraft(
        outcome,
        draft.id(),
        draft.version(),
        Json.time(draft.time()),
        draft.author(),
        draft.content(),
        List.of());
  }

  private static BakeFormViews.Unfinished entry(Draft draft) {
    JsonObject document = object(draft);
    int pieces =
        document.members().get("form") instanceof JsonObject form
                && form.members().get("pieces") instanceof JsonArray list
            ? list.items().size()
            : 0;
    int timers =
        document.members().get("timers") instanceof JsonObject started
            ? started.members().size()
            : 0;
    return new BakeFormViews.Unfinished(
        draft.id(),
        draft.version(),
        Json.time(draft.time()),
        draft.author(),
        text(document, "address").orElse(""),
        text(document, "bake").orElse(null),
        pieces,
        timers);
  }

  private static Optional<String> text(JsonObject object, String name) {
    return object.members().get(name) instanceof JsonString text
        ? Optional.of(text.value())
        : Optional.empty();
  }

  private static JsonObject object(Draft draft) {
    return parsed(draft.content()).orElse(new JsonObject(Map.of()));
  }

  private static Optional<JsonObject> parsed(String json) {
    try {
      JsonValue value = JsonReader.read("draft", json.getBytes(StandardCharsets.UTF_8));
      return value instanceof JsonObject object ? Optional.of(object) : Optional.empty();
    } catch (UnreadableException e) {
      return Optional.empty();
    }
  }

  private static void checked(String document) {
    if (parsed(document).isEmpty()) {
      throw new Refusal(
          Refusal.Reason.INVALID,
          "document",
          "The draft is not understood.",
          "Reload the page and try again.");
    }
  }
}
