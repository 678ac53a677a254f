package io.ovenmark.desk;

import io.ovenmark.measure.Quoting;
import io.ovenmark.notebook.Refusal;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** What somebody wrote to word cautions longer, each as {@code KEY=TEXT}. */
final class CautionWords {
  /** The most signs that are added to one caution. */
  static final int LONGEST = 1000;

  private CautionWords() {}

  /**
   * Reads them.
   *
   * @param given each as {@code KEY=TEXT}; what is given for the same key twice is put together
   * @return the texts by key
   * @throws Refusal when one has no key, or is too long
   */
  static Map<String, String> read(List<String> given) {
    Map<String, String> words = new TreeMap<>();
    for (String each : given) {
      int sign = each.indexOf('=');
      if (sign < 1 || each.substring(0, sign).isBlank()) {
        throw new Refusal(
            Refusal.Reason.INVALID,
            "word",
            Quoting.quote(each) + " does not name a caution.",
            "Write KEY=TEXT, such as \"egg=Use a probe.\"");
      }
      String key = each.substring(0, sign).strip();
      String text = each.substring(sign + 1).replaceAll("\\s*\\R\\s*", " ").strip();
      String all = words.merge(key, text, (one, other) -> (one + " " + other).strip());
      if (all.length() > LONGEST) {
        throw new Refusal(
            Refusal.Reason.INVALID,
            "word",
            "What is added to the caution " + Quoting.quote(key) + " is too long for a card.",
            "Keep it to " + LONGEST + " signs.");
      }
    }
    return words;
  }
}
