package io.ovenmark.desk;

import com.fasterxml.jackson.annotation.JsonValue;
import io.ovenmark.measure.Quantity;
import io.ovenmark.worksheet.Figure;
import io.ovenmark.worksheet.Macros;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * Figures by name, as programs see them: a number where it is exactly known, {@code null} where it
 * is not. What is known about a figure that is not exact stands in {@code bounds}: {@code
 * "fibre_g": {"at_least": 3.1, "at_most": null}}; nothing stands there for a figure of which
 * nothing is known.
 *
 * @param figures the figures in order
 */
public record FigureSet(Map<String, Quantity> figures) {
  /** Copies the map. */
  public FigureSet {
    figures = Collections.unmodifiableMap(new LinkedHashMap<>(figures));
  }

  /**
   * The macros.
   *
   * @param macros of a worksheet
   * @return the set
   */
  public static FigureSet of(Macros macros) {
    Map<String, Quantity> figures = new LinkedHashMap<>();
    for (Figure figure : Figure.macros()) {
      figures.put(figure.key(), macros.get(figure));
    }
    return new FigureSet(figures);
  }

  /**
   * One figure as a program sees it.
   *
   * @param quantity the figure
   * @return the number, or null when it is not exactly known
   */
  public static Double number(Quantity quantity) {
    return quantity.isKnown() ? quantity.low() : null;
  }

  /**
   * The members of the JSON object.
   *
   * @return name to number or null, then {@code bounds} when there are any
   */
  @JsonValue
  public Map<String, Object> json() {
    Map<String, Object> members = new LinkedHashMap<>();
    Map<String, Object> bounds = new LinkedHashMap<>();
    figures.forEach(
        (name, quantity) -> {
          members.put(name, number(quantity));
          if (!quantity.isKnown() && !quantity.isUnknown()) {
            Map<String, Object> bound = new LinkedHashMap<>();
            bound.put("at_least", finite(quantity.low()));
            bound.put("at_most", finite(quantity.high()));
            bounds.put(name, bound);
          }
        });
    if (!bounds.isEmpty()) {
      members.put("bounds", bounds);
    }
    return members;
  }

  private static Double finite(double bound) {
    return Double.isFinite(bound) ? bound : null;
  }
}
