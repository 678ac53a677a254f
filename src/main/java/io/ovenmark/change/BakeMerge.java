package io.ovenmark.change;

import static java.util.Objects.requireNonNull;

import io.ovenmark.bake.Bake;
import io.ovenmark.bake.BakeCodec;
import io.ovenmark.bake.Photo;
import io.ovenmark.bake.Piece;
import io.ovenmark.json.CanonicalJson;
import io.ovenmark.json.JsonReader;
import io.ovenmark.json.JsonValue.JsonObject;
import java.nio.charset.StandardCharsets;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Brings two versions of a bake together that come from the same one: piece by piece through their
 * letters, photo by photo through their files, and field by field within them.
 *
 * <pre>{@code
 * BakeMerge.Outcome merged = BakeMerge.merge(base, ours, theirs, Map.of());
 * if (!merged.isSettled()) {
 *   merged = BakeMerge.merge(base, ours, theirs, Map.of("pieces.a.baked_g", Choice.OURS));
 * }
 * }</pre>
 *
 * <p>The rules are those of {@link FormulaMerge}: what one side changed and the other left alone is
 * taken, the same change on both sides counts once, and the rest is a conflict. Both sides may add
 * and remove findings, and both may add tasters' scores at the end. Marks of a piece that a side
 * removed go with it.
 */
public final class BakeMerge {
  private BakeMerge() {}

  /**
   * What became of it.
   *
   * @param bake all that is settled, with our version at each open conflict
   * @param conflicts the open ones, none when all is settled
   */
  public record Outcome(Bake bake, List<Conflict> conflicts) {
    /** Copies the list. */
    public Outcome {
      requireNonNull(bake, "bake");
      conflicts = List.copyOf(conflicts);
    }

    /**
     * Whether nothing is left to choose.
     *
     * @return true when there is no open conflict
     */
    public boolean isSettled() {
      return conflicts.isEmpty();
    }
  }

  /**
   * What became of two documents.
   *
   * @param json all that is settled, with our version at each open conflict
   * @param conflicts the open ones
   */
  public record MergedText(String json, List<Conflict> conflicts) {
    /** Copies the list. */
    public MergedText {
      requireNonNull(json, "json");
      conflicts = List.copyOf(conflicts);
    }
  }

  /**
   * Merges bakes of the same name.
   *
   * @param base the bake that both sides came from
   * @param ours the first side
   * @param theirs the second side
   * @param chosen which side to take at a conflict, by its path; a path that is none is ignored
   * @return the bake, and what is open
   */
  public static Outcome merge(Bake base, Bake ours, Bake theirs, Map<String, Choice> chosen) {
    Three<JsonObject> sides = new Three<>(base, ours, theirs).map(BakeMerge::document);
    DocumentMerge.Outcome merged = DocumentMerge.merge(sides, chosen, BakeWords::of);
    Bake bake =
        BakeCodec.read(
            ours.path(), ours.formula(), ours.id(), CanonicalJson.write(merged.document()));
    return new Outcome(withoutLostMarks(base, bake), merged.conflicts());
  }

  /**
   * Merges what was typed into two copies of a form, JSON objects whose pieces have the member
   * {@code key} or {@code id}.
   *
   * @param base what both sides came from
   * @param ours the first side
   * @param theirs the second side
   * @param chosen which side to take at a conflict, by its path
   * @return JSON, and what is open
   * @throws io.ovenmark.json.UnreadableException when one of the three is no JSON
   * @throws IllegalArgumentException when one of the three is no object
   */
  public static MergedText mergeForms(
      String base, String ours, String theirs, Map<String, Choice> chosen) {
    Three<JsonObject> sides = new Three<>(base, ours, theirs).map(BakeMerge::document);
    DocumentMerge.Outcome merged = DocumentMerge.merge(sides, chosen, BakeWords::of);
    return new MergedText(CanonicalJson.text(merged.document()), merged.conflicts());
  }

  private static JsonObject document(Bake bake) {
    return object(BakeCodec.write(bake));
  }

  private static JsonObject document(String json) {
    return object(json.getBytes(StandardCharsets.UTF_8));
  }

  private static JsonObject object(byte[] utf8) {
    if (JsonReader.read("bake", utf8) instanceof JsonObject object) {
      return object;
    }
    throw new IllegalArgumentException("The form is not a JSON object.\nReload the page.");
  }

  private static Bake withoutLostMarks(Bake base, Bake merged) {
    Set<String> lost = new HashSet<>();
    base.pieces().forEach(piece -> lost.add(piece.id()));
    merged.pieces().stream().map(Piece::id).forEach(lost::remove);
    if (lost.isEmpty()) {
      return merged;
    }
    List<Photo> photos =
        merged.photos().stream()
            .map(
                photo ->
                    new Photo(
                        photo.file(),
                        photo.caption(),
                        photo.taken(),
                        photo.marks().stream()
                            .filter(mark -> !lost.contains(mark.piece()))
                            .toList(),
                        photo.extras()))
            .toList();
    return merged.withPhotos(photos);
  }
}
