package io.ovenmark.cause;

import io.ovenmark.formula.BakeSetting;
import io.ovenmark.formula.Formula;
import io.ovenmark.formula.Line;
import io.ovenmark.formula.Yield;
import java.util.ArrayList;
import java.util.List;

/** The same formula with one part of it another. */
final class Recipes {
  private Recipes() {}

  static Formula withLines(Formula formula, List<Line> lines) {
    return of(formula, lines, formula.method(), formula.bake(), formula.yield());
  }

  static Formula withMethod(Formula formula, List<String> method) {
    return of(formula, formula.lines(), method, formula.bake(), formula.yield());
  }

  static Formula withYield(Formula formula, Yield yield) {
    return of(formula, formula.lines(), formula.method(), formula.bake(), yield);
  }

  /** The first stage in place of what was first; added when there was none. */
  static Formula withFirstStage(Formula formula, BakeSetting stage) {
    List<BakeSetting> stages = new ArrayList<>(formula.bake());
    if (stages.isEmpty()) {
      stages.add(stage);
    } else {
      stages.set(0, stage);
    }
    return withBake(formula, stages);
  }

  static Formula withBake(Formula formula, List<BakeSetting> stages) {
    return of(formula, formula.lines(), formula.method(), stages, formula.yield());
  }

  private static Formula of(
      Formula formula,
      List<Line> lines,
      List<String> method,
      List<BakeSetting> bake,
      Yield yield) {
    return new Formula(
        formula.name(),
        formula.description(),
        formula.goal(),
        formula.reference(),
        lines,
        method,
        bake,
        yield,
        formula.storage(),
        formula.extras());
  }
}
