package io.ovenmark.notebook;

import io.ovenmark.notebook.store.Chronicle;
import io.ovenmark.notebook.store.CommitFacts;
import io.ovenmark.notebook.store.CommitId;
import io.ovenmark.notebook.store.Companion;
import io.ovenmark.notebook.store.StoreException;
import java.util.ArrayList;
import java.util.List;
import java.util.function.IntFunction;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The variants and publications that came in with a formula. The commit that takes it in names them
 * with the commits that they led to, so that undoing it takes them back too, and undoing that
 * brings them back.
 */
final class TakenAlong {
  /** Trailer that names the branches and tags that came along, each with its commit. */
  static final String TAKES_IN_WITH = "Takes-in-with";

  private static final Pattern NAMED = Pattern.compile("([^ ;]+) ([0-9a-f]{40})");

  private TakenAlong() {}

  /** The trailer's line; empty when nothing came along. */
  static String trailer(Chronicle told, IntFunction<CommitId> ids) {
    List<String> named = new ArrayList<>();
    told.branches()
        .forEach(
            (branch, step) -> {
              if (!branch.equals(Layout.MAIN)) {
                named.add(branch + " " + ids.apply(step).hex());
              }
            });
    told.labels().forEach(each -> named.add(each.name() + " " + ids.apply(each.step()).hex()));
    return named.isEmpty() ? "" : "\n" + TAKES_IN_WITH + ": " + String.join("; ", named);
  }

  /** What undoing a commit does to branches and tags. */
  static List<Companion> of(Notebook notebook, CommitFacts change) {
    CommitFacts facts = change;
    Companion.Way way = Companion.Way.PUT_ASIDE;
    while (!facts.trailers().containsKey(TAKES_IN_WITH)) {
      String undone = facts.trailers().getOrDefault(RecordWriter.UNDOES, "");
      if (!undone.matches("[0-9a-f]{40}")) {
        return List.of();
      }
      try {
        facts = notebook.store().facts(new CommitId(undone));
      } catch (StoreException missing) {
        return List.of();
      }
      way =
          way == Companion.Way.PUT_ASIDE
              ? Companion.Way.BRING_BACK
              : Companion.Way.PUT_ASIDE;
    }
    return read(facts, way);
  }

  /** Only what belongs to the formula that came in. */
  private static List<Companion> read(CommitFacts facts, Companion.Way way) {
    String as = facts.trailers().getOrDefault(IncomingFormula.TAKES_IN, "").split(" ")[0];
    List<Companion> along = new ArrayList<>();
    Matcher named = NAMED.matcher(facts.trailers().get(TAKES_IN_WITH));
    while (named.find()) {
      String name = named.group(1);
      boolean variant = name.startsWith(Layout.variantBranch(as, ""));
      if (variant || name.startsWith(Layout.PUBLISHED + as + "/")) {
        along.add(
            new Companion(
                variant ? Companion.Kind.BRANCH : Companion.Kind.TAG,
                name,
                new CommitId(named.group(2)),
                way));
      }
    }
    return along;
  }

  /** How a person calls it: the variant's line, or the published revision. */
  static String called(Companion companion) {
    String prefix =
        companion.kind() == Companion.Kind.BRANCH ? Layout.VARIANTS : Layout.PUBLISHED;
    String name = companion.name().substring(prefix.length());
    int slash = name.lastIndexOf('/');
    return companion.kind() == Companion.Kind.BRANCH
        ? name
        : name.substring(0, slash) + "@" + name.substring(slash + 1);
  }
}
