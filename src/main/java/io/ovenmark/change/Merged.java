package io.ovenmark.change;

import static java.util.Objects.requireNonNull;

import io.ovenmark.formula.Formula;
import java.util.List;
import java.util.Map;

/** What came of bringing two sides together. */
public sealed interface Merged {
  /**
   * What a person should know although it needs no choice: that both sides put the lines in another
   * order and only one order could be kept.
   *
   * @return sentences, mostly none
   */
  List<String> notes();

  /**
   * Everything that either side changed is in the formula.
   *
   * @param formula the merged formula
   * @param notes what to know
   */
  record Settled(Formula formula, List<String> notes) implements Merged {
    /** Copies the list. */
    public Settled {
      requireNonNull(formula, "formula");
      notes = List.copyOf(notes);
    }
  }

  /**
   * The sides contradict each other somewhere; nothing is decided until {@link
   * FormulaMerge#resolve} is given a choice for each conflict.
   *
   * @param draft all that is settled, with the first side's version at each open conflict
   * @param conflicts the open ones, in the order of the formula's fields, at least one
   * @param notes what to know
   * @param sides what was merged
   */
  record Conflicting(Formula draft, List<Conflict> conflicts, List<String> notes, Sides sides)
      implements Merged {
    /** Copies the lists. */
    public Conflicting {
      requireNonNull(draft, "draft");
      conflicts = List.copyOf(conflicts);
      notes = List.copyOf(notes);
      requireNonNull(sides, "sides");
    }

    /**
     * Says what is still open.
     *
     * @return one sentence that names the places
     */
    public String sentence() {
      List<String> paths =
          conflicts.stream().map(conflict -> Texts.shown(conflict.path())).toList();
      return Texts.counted(paths.size(), "change still contradicts", "changes still contradict")
          + " the other side's: "
          + Texts.listed(paths)
          + ".";
    }
  }

  /**
   * What a merge began with, kept so that it can be taken up again.
   *
   * @param base the formula that both sides came from
   * @param ours the first side
   * @param theirs the second side
   * @param chosen the choices made so far, by conflict path
   */
  record Sides(Formula base, Formula ours, Formula theirs, Map<String, Choice> chosen) {
    /** Copies the choices. */
    public Sides {
      requireNonNull(base, "base");
      requireNonNull(ours, "ours");
      requireNonNull(theirs, "theirs");
      chosen = Map.copyOf(chosen);
    }
  }
}
