package io.ovenmark.bake;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;

/**
 * Reads pieces as a baker notes them, each in one line:
 *
 * <pre>{@code
 * a 190 °C 24 min dough=95g baked=82g width=88mm height=46mm core=96C crust=2 liking=7,8,6
 *   finding='gummy crumb' score.sweet=1,0 rack=middle verdict=longer note='dark at the edge'
 * }</pre>
 *
 * <p>{@code log='4 min 45 °C, 8 min 78 °C'} holds core temperatures through the bake. The letter
 * comes first and may be left out; then the next free one is taken. Temperature and
 * time may also be written {@code oven=} and {@code time=}; lengths are in mm, cm or in. More than
 * one word needs quotes; {@code finding} may stand several times or hold several with commas
 * between. Nothing after the sign of equality takes a value back.
 */
public final class PieceText {
  /** The most pieces of one bake. */
  public static final int MOST_PIECES = 200;

  private static final int LETTERS = 26;
  private static final Pattern LETTER = Pattern.compile("[a-z0-9]{1,12}");

  private PieceText() {}

  /**
   * Reads pieces, each onto the one of the same letter where there is one, else as a new one at the
   * end.
   *
   * @param before the pieces so far
   * @param texts one text for each piece
   * @return all pieces
   * @throws IllegalArgumentException with a sentence and, after a line break, a remedy
   */
  public static List<Piece> read(List<Piece> before, List<String> texts) {
    List<Piece> pieces = new ArrayList<>(before);
    Set<String> written = new HashSet<>();
    for (String text : texts) {
      List<PieceWord> words = PieceWord.split(text);
      boolean named = !words.isEmpty() && isLetter(words.get(0));
      String id = named ? words.get(0).text() : freeLetter(pieces);
      if (!written.add(id)) {
        throw PieceWord.bad(
            "The piece \"" + id + "\" is written twice.", "Write everything about it in one text.");
      }
      int at = indexOf(pieces, id);
      PieceDraft draft = new PieceDraft(at < 0 ? Piece.named(id) : pieces.get(at), text);
      words.stream().skip(named ? 1 : 0).forEach(draft::take);
      if (at < 0) {
        pieces.add(draft.piece());
      } else {
        pieces.set(at, draft.piece());
      }
    }
    if (pieces.size() > MOST_PIECES) {
      throw PieceWord.bad(
          "The bake has " + pieces.size() + " pieces, more than " + MOST_PIECES + ".",
          "Record it as several bakes.");
    }
    return List.copyOf(pieces);
  }

  /**
   * The letter of a piece by its place: a to z, then aa, ab and so on.
   *
   * @param place from 0
   * @return the letter
   */
  static String letter(int place) {
    String last = String.valueOf((char) ('a' + place % LETTERS));
    return place < LETTERS ? last : letter(place / LETTERS - 1) + last;
  }

  private static String freeLetter(List<Piece> pieces) {
    int place = 0;
    while (indexOf(pieces, letter(place)) >= 0) {
      place++;
    }
    return letter(place);
  }

  private static int indexOf(List<Piece> pieces, String id) {
    for (int i = 0; i < pieces.size(); i++) {
      if (pieces.get(i).id().equals(id)) {
        return i;
      }
    }
    return -1;
  }

  private static boolean isLetter(PieceWord word) {
    return word.name().isEmpty()
        && !word.quoted()
        && LETTER.matcher(word.text()).matches()
        && PieceMeasure.bareField(word.text()).isEmpty();
  }
}
