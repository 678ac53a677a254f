package io.ovenmark.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import java.util.Locale;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class SlugTest {
  @ParameterizedTest
  @ValueSource(strings = {"a", "7", "lupin-bun", "a-1-b", "oat-2"})
  void acceptsShortNames(String text) {
    assertThat(Slug.isSlug(text)).isTrue();
    assertThat(Slug.check(text)).isSameAs(text);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "-",
        "-a",
        "a-",
        "a--b",
        "A",
        "é",
        "a b",
        "a_b",
        "a.b",
        "..",
        "a/b",
        "a\n",
        "α",
        "<script>",
        "ａ",
        "١"
      })
  void refusesEverythingElse(String text) {
    assertThat(Slug.isSlug(text)).isFalse();
    assertThatExceptionOfType(IllegalArgumentException.class)
        .isThrownBy(() -> Slug.check(text))
        .withMessage(
            "\""
                + text.strip()
                + "\" cannot be a short name.\nUse up to 64 lower-case letters a-z,"
                + " digits and single hyphens, such as \"lupin-bun\".");
  }

  @Test
  void refusesWhatIsTooLongWithAShortMessage() {
    assertThat(Slug.isSlug("a".repeat(64))).isTrue();
    assertThat(Slug.isSlug("a".repeat(65))).isFalse();
    assertThat(Slug.isSlug("a" + "-a".repeat(1_000_000))).isFalse();
    assertThatExceptionOfType(IllegalArgumentException.class)
        .isThrownBy(() -> Slug.check("a".repeat(1_000_000)))
        .withMessageStartingWith("\"" + "a".repeat(40) + "…\" cannot be a short name.\n");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "Seeded lupin bun|seeded-lupin-bun",
        "Crème brûlée|creme-brulee",
        "  Bun -- no. 2! |bun-no-2",
        "Weißbrot|weissbrot",
        "Smørrebrød|smorrebrod",
        "Æbleskiver|aebleskiver",
        "İZMİR|izmir",
        "ﬁg bar|fig-bar",
        "Ψωμί|fallback",
        "<script>|script",
        "🍞|fallback",
        "½ loaf|1-2-loaf",
        "Ψωμί 2|2"
      })
  void proposesAShortNameForAnyName(String name, String slug) {
    assertThat(Slug.of(name, "fallback")).isEqualTo(slug);
  }

  @Test
  void proposesTheSameInEveryLocale() {
    Locale before = Locale.getDefault();
    try {
      Locale.setDefault(Locale.forLanguageTag("tr-TR"));
      assertThat(Slug.of("INJERA", "x")).isEqualTo("injera");
    } finally {
      Locale.setDefault(before);
    }
  }

  @Test
  void whateverItProposesIsAShortName() {
    Random random = new Random(64);
    for (int round = 0; round < 5_000; round++) {
      StringBuilder name = new StringBuilder();
      for (int i = random.nextInt(120); i > 0; i--) {
        name.append(
            (char) (random.nextInt(3) > 0 ? 32 + random.nextInt(96) : random.nextInt(0x10000)));
      }
      assertThat(Slug.isSlug(Slug.of(name.toString(), "x"))).as(name.toString()).isTrue();
    }
    assertThat(Slug.of("x".repeat(1_000_000), "y")).hasSize(64);
    assertThat(Slug.of("x".repeat(63) + " y", "y")).isEqualTo("x".repeat(63));
  }
}
