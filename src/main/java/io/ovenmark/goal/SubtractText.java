package io.ovenmark.goal;

import io.ovenmark.measure.Quoting;
import io.ovenmark.worksheet.NetCarbohydrate;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reads what net carbohydrate takes from carbohydrate: {@code fibre,polyols,allulose}, {@code
 * fibre,polyols=0.5} for half of the polyols, {@code none} for nothing.
 */
public final class SubtractText {
  private static final Pattern PART =
      Pattern.compile("(fibre|fiber|polyols|allulose)(?:\\s*=\\s*(0?\\.\\d{1,6}|[01](?:\\.0)?))?");

  private SubtractText() {}

  /**
   * Reads a policy.
   *
   * @param text parts with commas between, or {@code none}
   * @return the policy
   * @throws IllegalArgumentException with a sentence and, after a line break, a remedy
   */
  public static NetCarbohydrate read(String text) {
    Map<String, Double> shares = new HashMap<>();
    String plain = text.strip().toLowerCase(Locale.ROOT);
    String[] parts = plain.equals("none") ? new String[0] : plain.split(",", -1);
    for (String part : parts) {
      Matcher matcher = PART.matcher(part.strip());
      if (!matcher.matches()) {
        throw new IllegalArgumentException(
            Quoting.quote(part)
                + " is nothing that net carbohydrate can leave out.\n"
                + "Write fibre, polyols and allulose with commas between, a share as in"
                + " polyols=0.5, or none.");
      }
      double share = matcher.group(2) == null ? 1 : Double.parseDouble(matcher.group(2));
      shares.put(matcher.group(1).replace("fiber", "fibre"), share);
    }
    return new NetCarbohydrate(
        shares.getOrDefault("fibre", 0.0),
        shares.getOrDefault("polyols", 0.0),
        shares.getOrDefault("allulose", 0.0));
  }
}
