package io.ovenmark.effect;

import io.ovenmark.bake.Bake;
import io.ovenmark.worksheet.Worksheet;
import java.util.List;

/**
 * The bakes of a formula with what each was weighed by.
 *
 * @param bakes oldest first
 */
public record History(List<Baked> bakes) {

  /**
   * One bake.
   *
   * @param bake the bake with its pieces
   * @param address the revision that was baked, such as {@code seeded-lupin-bun@8}
   * @param sheet that revision worked out
   * @param line its line of history: empty text for the main line, else the variant's name
   */
  public record Baked(Bake bake, String address, Worksheet sheet, String line) {}

  /** Copies the list. */
  public History {
    bakes = List.copyOf(bakes);
  }
}
