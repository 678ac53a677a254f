package io.ovenmark.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import java.math.BigDecimal;
import java.util.Locale;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class AmountTest {
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      ignoreLeadingAndTrailingWhitespace = false,
      value = {
        "150 g|150|g|150 g",
        "188g|188|g|188 g",
        "  188 \t g |188|g|188 g",
        "188\u00a0g|188|g|188 g",
        "188\u202fg|188|g|188 g",
        "1\u2009½\u00a0cups|1.5|cup|1 ½ cups",
        "0 g|0|g|0 g",
        "0.0 g|0|g|0.0 g",
        "+5 g|5|g|+5 g",
        "-0 g|0|g|-0 g",
        "2.50 kg|2.5|kg|2.50 kg",
        ".5 tsp|0.5|tsp|.5 tsp",
        "1e3 g|1000|g|1e3 g",
        "1.5E-3 kg|0.0015|kg|1.5E-3 kg",
        "1/2 tsp|0.5|tsp|1/2 tsp",
        "1 / 2 tsp|0.5|tsp|1 / 2 tsp",
        "1 1/2 cups|1.5|cup|1 1/2 cups",
        "1  1/2 cups|1.5|cup|1 1/2 cups",
        "1½ cups|1.5|cup|1½ cups",
        "1 ½ cups|1.5|cup|1 ½ cups",
        "½ tsp|0.5|tsp|½ tsp",
        "⅛tsp|0.125|tsp|⅛ tsp",
        "¾ cup|0.75|cup|¾ cup",
        "⅔ cup|0.6666666666666667|cup|⅔ cup",
        "3⁄4 cup|0.75|cup|3⁄4 cup",
        "2 Tbsp.|2|tbsp|2 Tbsp.",
        "2 T|2|tbsp|2 T",
        "2 t|2|t|2 t",
        "8 FL OZ|8|fl oz|8 FL OZ",
        "8 fl. oz.|8|fl oz|8 fl. oz.",
        "2 eggs|2|eggs|2 eggs",
        "3 e|3|e|3 e",
        "3 large|3|large|3 large",
        "1 cup, sifted|1|cup, sifted|1 cup, sifted",
        "1 can (400 ml)|1|can (400 ml)|1 can (400 ml)",
        "2 φέτες|2|φέτες|2 φέτες",
        "1 <script>|1|<script>|",
        "1000000 g|1000000|g|1000000 g",
      })
  void readsNumberMeasureAndText(String text, BigDecimal number, String measure, String shown) {
    if (shown == null) {
      assertThatExceptionOfType(IllegalArgumentException.class)
          .isThrownBy(() -> Amount.parse(text));
      return;
    }
    Amount amount = Amount.parse(text);
    assertThat(amount.number()).isEqualByComparingTo(number);
    assertThat(amount.measure()).isEqualTo(measure);
    assertThat(amount).hasToString(shown);
    assertThat(Amount.parse(amount.toString())).isEqualTo(amount);
    assertThat(Amount.parse(amount.toString()).writtenAs(amount)).isTrue();
  }

  private static final String UNDERSTOOD =
      "Write a number and a unit, such as \"150 g\", \"1 1/2 tsp\" or \"3 large\".";
  private static final String COMMA =
      "Write decimals with a point and no thousands separators, such as \"1.5 g\".";
  private static final String ONE =
      "Write one number and one unit; use two lines, or add the two up.";
  private static final String MOST = "The most that can be written is 1000000 of a unit.";
  private static final String UNIT = "Add g, ml, tsp or a measure of the food such as \"large\".";

  private static void assertRefused(String text, String message, String hint) {
    assertThatExceptionOfType(IllegalArgumentException.class)
        .isThrownBy(() -> Amount.parse(text))
        .withMessage("The amount " + message + "\n" + hint);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        " ",
        "g",
        "nan g",
        "NaN g",
        "Infinity g",
        "a pinch",
        "½½ g",
        "1/2/3 g",
        "1..5 g",
        "- 5 g",
        "5 %",
        "0x10 g",
        "1 2 g",
        "²g",
        "٣ g",
        "five g",
        "1e g5",
        "<b>5 g</b>"
      })
  void refusesWhatIsNoAmount(String text) {
    assertThatExceptionOfType(IllegalArgumentException.class)
        .isThrownBy(() -> Amount.parse(text))
        .withMessageStartingWith("The amount \"" + text.strip() + "\" is not understood.\nWrite ");
  }

  @Test
  void saysWhatIsWrongAndWhatToDo() {
    assertRefused("lots", "\"lots\" is not understood.", UNDERSTOOD);
    assertRefused("1,5 g", "\"1,5 g\" is not understood.", COMMA);
    assertRefused("1,000 g", "\"1,000 g\" is not understood.", COMMA);
    assertRefused("1 cup 2 tbsp", "\"1 cup 2 tbsp\" is not understood.", ONE);
    assertRefused("150 g 3", "\"150 g 3\" is not understood.", ONE);
    assertRefused("5", "\"5\" has no unit.", UNIT);
    assertRefused("1 1/2", "\"1 1/2\" has no unit.", UNIT);
    assertRefused("-5 g", "\"-5 g\" is negative.", "Use 0 or more.");
    assertRefused("−½ tsp", "\"−½ tsp\" is negative.", "Use 0 or more.");
    assertRefused("1/0 g", "\"1/0 g\" divides by zero.", "Correct the fraction.");
    assertRefused(
        "0.1234567890123 g",
        "\"0.1234567890123 g\" has too many decimals.",
        "Round it to 12 decimals or fewer.");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "1000000.1 g",
        "1e308 g",
        "1e2147483647 g",
        "1e2147483648 g",
        "1e99999999999999999999 g",
        "99999999999999 1/2 g",
        "1000001 ml",
        "9e99 large"
      })
  void refusesAbsurdNumbers(String text) {
    assertRefused(text, "\"" + text + "\" is absurdly large or small.", MOST);
  }

  @Test
  void cutsLongTextsInTheMessage() {
    String digits = "9".repeat(1_000_000);
    assertRefused(
        digits + " g", "\"" + "9".repeat(40) + "…\" is too long.", "Put remarks in the note.");
    assertRefused(
        "1" + " ".repeat(1_000_000) + "?" + "x".repeat(120),
        "\"1\" is too long.",
        "Put remarks in the note.");
    assertThat(Amount.parse("1" + " ".repeat(1_000_000) + "g")).hasToString("1 g");
  }

  @Test
  void keepsQuotedTextOnOneLine() {
    assertRefused("5\ng\n6", "\"5 g 6\" is not understood.", ONE);
  }

  @ParameterizedTest
  @CsvSource({
    "0.5 tsp, ½ tsp, true",
    "1/2 tsp, 0.50 teaspoons, true",
    "2 tbsp, 2 T, true",
    "1 g, 1 G, true",
    "1000 g, 1 kg, false",
    "1 large, 1 Large, false",
    "1 g, 2 g, false"
  })
  void isEqualWhenNumberAndMeasureAre(String one, String other, boolean equal) {
    assertThat(Amount.parse(one).equals(Amount.parse(other))).isEqualTo(equal);
    if (equal) {
      assertThat(Amount.parse(one)).hasSameHashCodeAs(Amount.parse(other));
      assertThat(Amount.parse(one).writtenAs(Amount.parse(other))).isFalse();
    }
  }

  @Test
  void givesMassOrVolumeOrNeither() {
    assertThat(Amount.parse("1.5 kg").grams())
        .hasValueSatisfying(grams -> assertThat(grams).isEqualByComparingTo("1500"));
    assertThat(Amount.parse("1.5 kg").millilitres()).isEmpty();
    assertThat(Amount.parse("2 dl").millilitres())
        .hasValueSatisfying(millilitres -> assertThat(millilitres).isEqualByComparingTo("200"));
    assertThat(Amount.parse("2 dl").grams()).isEmpty();
    assertThat(Amount.parse("3 large").grams()).isEmpty();
    assertThat(Amount.parse("3 large").millilitres()).isEmpty();
    assertThat(Amount.parse("3 large").unit()).isEmpty();
  }

  @Test
  void makesGramsOfAnyNumber() {
    assertThat(Amount.grams(new BigDecimal("1.5e2"))).hasToString("150 g");
    assertThat(Amount.grams(new BigDecimal("0.10"))).hasToString("0.1 g");
    assertThat(Amount.grams(new BigDecimal(0.1))).hasToString("0.1 g");
    assertThat(Amount.grams(BigDecimal.ZERO)).hasToString("0 g");
    for (String refused : new String[] {"-1", "1e7", "1e2147483647"}) {
      assertThatExceptionOfType(IllegalArgumentException.class)
          .isThrownBy(() -> Amount.grams(new BigDecimal(refused)));
    }
  }

  @Test
  void readsTheSameInEveryLocale() {
    Locale before = Locale.getDefault();
    try {
      Locale.setDefault(Locale.forLanguageTag("tr-TR"));
      assertThat(Amount.parse("2 PINTS").measure()).isEqualTo("pint");
      assertThat(Amount.parse("1 MILLILITRE").measure()).isEqualTo("ml");
    } finally {
      Locale.setDefault(before);
    }
  }

  @Test
  void randomTextsAreReadOrRefusedWithSentenceAndRemedy() {
    String alphabet = "0123456789 ./,½⅓⁄-−+eEgkmltspcuφ(<\u00a0\n'\"";
    Random random = new Random(44);
    for (int round = 0; round < 20_000; round++) {
      StringBuilder text = new StringBuilder();
      for (int i = random.nextInt(10); i >= 0; i--) {
        text.append(alphabet.charAt(random.nextInt(alphabet.length())));
      }
      try {
        Amount amount = Amount.parse(text.toString());
        assertThat(amount.number()).isBetween(BigDecimal.ZERO, Amount.GREATEST);
        assertThat(Amount.parse(amount.toString())).isEqualTo(amount);
        assertThat(Amount.parse(amount.toString()).writtenAs(amount)).isTrue();
      } catch (IllegalArgumentException e) {
        assertThat(e.getMessage()).matches("The amount \".*\" [^\n]*\\.\n[A-Z].*\\.");
      }
    }
  }
}
