package io.ovenmark.notebook;

import io.ovenmark.formula.Formula;
import io.ovenmark.formula.FormulaCodec;
import io.ovenmark.json.UnreadableException;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;

/** The fields of a file that this program does not know, which go wherever the file goes. */
final class UnknownFields {
  private UnknownFields() {}

  /** Their names; none for a file that cannot be read. */
  static List<String> of(String path, byte[] bytes) {
    TreeSet<String> names = new TreeSet<>();
    try {
      NotebookFile file = NotebookFile.read(path, bytes);
      if (file instanceof NotebookFile.FormulaFile formula) {
        names.addAll(formula.formula().extras().names());
        formula.formula().lines().forEach(line -> names.addAll(line.extras().names()));
      } else if (file instanceof NotebookFile.BakeFile bake) {
        names.addAll(bake.bake().extras().names());
        bake.bake().pieces().forEach(piece -> names.addAll(piece.extras().names()));
        bake.bake().photos().forEach(photo -> names.addAll(photo.extras().names()));
      } else if (file instanceof NotebookFile.FoodFile food) {
        names.addAll(food.food().extras().names());
      } else if (file instanceof NotebookFile.GoalFile goal) {
        names.addAll(goal.goal().extras().names());
      }
    } catch (UnreadableException damaged) {
      return List.of();
    }
    return List.copyOf(names);
  }

  /** A formula that can be read. */
  static Optional<Formula> formula(String path, byte[] bytes) {
    try {
      return Optional.of(FormulaCodec.read(path, bytes));
    } catch (UnreadableException damaged) {
      return Optional.empty();
    }
  }
}
