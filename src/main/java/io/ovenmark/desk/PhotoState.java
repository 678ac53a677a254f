package io.ovenmark.desk;

import io.ovenmark.bake.Photo;
import io.ovenmark.measure.FigureText;
import io.ovenmark.notebook.Refusal;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * What is said of a photo: its words and its marks. Of a photo that two people change at the same
 * time, what only one of them touched is kept from both; a piece's marks count as one thing.
 *
 * @param caption what is said beside it; empty when not written
 * @param alternative what it shows, for whoever does not see it; empty when not written
 * @param marks which piece is where
 */
public record PhotoState(
    Optional<String> caption, Optional<String> alternative, List<Photo.Mark> marks) {
  private static final int LONGEST_CAPTION = 300;
  private static final int LONGEST_ALTERNATIVE = 1000;
  private static final int MOST_MARKS = 200;

  /** A quarter of a pixel of the widest picture that is kept. */
  private static final int DECIMALS = 4;

  /** Strips, rounds and copies. */
  public PhotoState {
    caption = stripped(caption);
    alternative = stripped(alternative);
    marks =
        marks.stream()
            .map(mark -> new Photo.Mark(mark.piece(), rounded(mark.x()), rounded(mark.y())))
            .toList();
  }

  private static Optional<String> stripped(Optional<String> text) {
    return text.map(String::strip).filter(each -> !each.isEmpty());
  }

  private static double rounded(double place) {
    return BigDecimal.valueOf(place).setScale(DECIMALS, RoundingMode.HALF_UP).doubleValue();
  }

  /**
   * A photo's state.
   *
   * @param photo the photo
   * @return its words and marks
   */
  public static PhotoState of(Photo photo) {
    return new PhotoState(photo.caption(), photo.alternative(), photo.marks());
  }

  /**
   * Checks what a person wants to say of a photo.
   *
   * @throws Refusal when a text is too long or there are too many marks
   */
  void requireUsable() {
    requireShort("caption", caption, LONGEST_CAPTION);
    requireShort("alternative", alternative, LONGEST_ALTERNATIVE);
    if (marks.size() > MOST_MARKS) {
      throw new Refusal(
          Refusal.Reason.INVALID,
          "marks",
          "The photo would have " + marks.size() + " marks, which is more than " + MOST_MARKS + ".",
          "Take some of them away.");
    }
  }

  private static void requireShort(String field, Optional<String> text, int longest) {
    if (text.filter(each -> each.length() > longest).isPresent()) {
      throw new Refusal(
          Refusal.Reason.INVALID,
          field,
          "The text has " + text.get().length() + " characters, which is more than " + longest
              + ".",
          "Shorten it; a long remark belongs into the note of the bake.");
    }
  }

  /** A merge of two changes of a photo, or what stands against it. */
  record Merged(Photo photo, List<PhotoViews.PhotoConflict> conflicts) {}

  /**
   * Merges a change into a photo that may have changed since.
   *
   * @param base what the change was based on
   * @param seen what somebody else made of it meanwhile, as far as that was seen and decided upon
   * @param now the photo as it is
   */
  Merged onto(PhotoState base, PhotoState seen, Photo now) {
    List<PhotoViews.PhotoConflict> conflicts = new ArrayList<>();
    PhotoState there = of(now);
    Optional<String> nextCaption = now.caption();
    if (!caption.equals(base.caption)) {
      nextCaption = caption;
      if (differ(caption, base.caption, seen.caption, there.caption)) {
        conflicts.add(conflict("caption", null, caption, there.caption));
      }
    }
    Optional<String> nextAlternative = now.alternative();
    if (!alternative.equals(base.alternative)) {
      nextAlternative = alternative;
      if (differ(alternative, base.alternative, seen.alternative, there.alternative)) {
        conflicts.add(conflict("alternative", null, alternative, there.alternative));
      }
    }
    Photo merged = now.withWords(nextCaption, nextAlternative);
    return new Merged(
        marks.equals(base.marks) ? merged : merged.withMarks(marks(base, seen, now, conflicts)),
        List.copyOf(conflicts));
  }

  private static boolean differ(Object mine, Object base, Object seen, Object theirs) {
    return !theirs.equals(base) && !theirs.equals(mine) && !theirs.equals(seen);
  }

  private static PhotoViews.PhotoConflict conflict(
      String what, String piece, Optional<String> mine, Optional<String> theirs) {
    return new PhotoViews.PhotoConflict(what, piece, mine.orElse(null), theirs.orElse(null));
  }

  private List<Photo.Mark> marks(
      PhotoState base, PhotoState seen, Photo now, List<PhotoViews.PhotoConflict> conflicts) {
    Map<String, List<Photo.Mark>> before = byPiece(base.marks);
    Map<String, List<Photo.Mark>> decided = byPiece(seen.marks);
    Map<String, List<Photo.Mark>> mine = byPiece(marks);
    Map<String, List<Photo.Mark>> theirs = byPiece(of(now).marks);
    Map<String, List<Photo.Mark>> kept = byPiece(now.marks());
    Set<String> pieces = new LinkedHashSet<>(kept.keySet());
    pieces.addAll(mine.keySet());
    pieces.addAll(before.keySet());
    List<Photo.Mark> all = new ArrayList<>();
    for (String piece : pieces) {
      List<Photo.Mark> was = before.getOrDefault(piece, List.of());
      List<Photo.Mark> wanted = mine.getOrDefault(piece, List.of());
      List<Photo.Mark> is = theirs.getOrDefault(piece, List.of());
      boolean keep = wanted.equals(was) || wanted.equals(is);
      all.addAll(keep ? kept.getOrDefault(piece, List.of()) : wanted);
      if (!keep && differ(wanted, was, decided.getOrDefault(piece, List.of()), is)) {
        conflicts.add(conflict("marks", piece, inWords(wanted), inWords(is)));
      }
    }
    return all;
  }

  private static Optional<String> inWords(List<Photo.Mark> marks) {
    return marks.isEmpty()
        ? Optional.empty()
        : Optional.of(
            marks.stream()
                .map(
                    mark ->
                        FigureText.number(100 * mark.x()) + " % from the left, "
                            + FigureText.number(100 * mark.y()) + " % from above")
                .collect(Collectors.joining("; ")));
  }

  private static Map<String, List<Photo.Mark>> byPiece(List<Photo.Mark> marks) {
    Map<String, List<Photo.Mark>> pieces = new LinkedHashMap<>();
    marks.forEach(
        mark -> pieces.computeIfAbsent(mark.piece(), piece -> new ArrayList<>()).add(mark));
    return pieces;
  }
}
