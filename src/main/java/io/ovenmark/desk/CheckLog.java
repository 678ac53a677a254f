package io.ovenmark.desk;

import io.ovenmark.json.Problem;
import io.ovenmark.notebook.Address;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Gathers what a check finds; the same fault of several branches is told once. */
final class CheckLog {
  private final List<KitchenViews.CheckResult> wrong = new ArrayList<>();
  private final List<KitchenViews.CheckResult> notices = new ArrayList<>();
  private final Set<String> told = new HashSet<>();

  void wrong(String where, Optional<Address> variant, String message, String hint) {
    add(wrong, "wrong", where, variant, message, hint);
  }

  void notice(String where, Optional<Address> variant, String message, String hint) {
    add(notices, "notice", where, variant, message, hint);
  }

  /** Everything that is wrong within a file. */
  void unreadable(List<Problem> problems, Optional<Address> variant) {
    problems.forEach(
        problem -> wrong(problem.where(), variant, problem.message(), problem.hint()));
  }

  private void add(
      List<KitchenViews.CheckResult> results,
      String level,
      String where,
      Optional<Address> variant,
      String message,
      String hint) {
    if (told.add(where + "\n" + message)) {
      results.add(
          new KitchenViews.CheckResult(
              level, where, variant.map(Address::line).orElse(null), message, hint));
    }
  }

  KitchenViews.CheckView view(int files, int photos, long objects) {
    List<KitchenViews.CheckResult> results = new ArrayList<>(wrong);
    results.addAll(notices);
    return new KitchenViews.CheckView(
        wrong.isEmpty(), wrong.size(), notices.size(), files, photos, objects, results);
  }
}
