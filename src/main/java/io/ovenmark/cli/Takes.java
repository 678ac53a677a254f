package io.ovenmark.cli;

import io.ovenmark.change.Choice;
import io.ovenmark.desk.Choices;
import io.ovenmark.notebook.Refusal;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** Reads {@code --take FIELD=SIDE}. */
final class Takes {
  private static final String REST = "all";

  private Takes() {}

  /**
   * Reads the choices.
   *
   * @param takes as typed, or null
   * @param ours the word for the first side
   * @param theirs the word for the second side
   */
  static Choices read(List<String> takes, String ours, String theirs) {
    Map<String, Choice> fields = new TreeMap<>();
    for (String take : takes == null ? List.<String>of() : takes) {
      int equals = take.indexOf('=');
      String side = take.substring(equals + 1).strip();
      Choice choice =
          side.equals(ours)
              ? Choice.OURS
              : side.equals(theirs) ? Choice.THEIRS : side.equals("before") ? Choice.BASE : null;
      if (equals < 1 || choice == null) {
        throw new Refusal(
            Refusal.Reason.INVALID,
            "--take",
            "\"" + take + "\" chooses no side.",
            "Write the field and the side: water.amount="
                + ours
                + ", water.amount="
                + theirs
                + ", water.amount=before, or all="
                + ours
                + ".");
      }
      fields.put(take.substring(0, equals).strip(), choice);
    }
    Choice rest = fields.remove(REST);
    return new Choices(fields, Optional.ofNullable(rest));
  }
}
