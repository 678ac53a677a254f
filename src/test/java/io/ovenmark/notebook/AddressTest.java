package io.ovenmark.notebook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class AddressTest {
  @ParameterizedTest
  @CsvSource({
    "lupin-bun, lupin-bun",
    "' lupin-bun ', lupin-bun",
    "lupin-bun@latest, lupin-bun",
    "lupin-bun@5, lupin-bun@5",
    "lupin-bun@005, lupin-bun@5",
    "lupin-bun@999999, lupin-bun@999999",
    "lupin-bun/egg-free, lupin-bun/egg-free",
    "lupin-bun/egg-free@7, lupin-bun/egg-free@7",
    "lupin-bun@4f2a91c, lupin-bun@4f2a91c",
    "lupin-bun@4F2A91C, lupin-bun@4f2a91c",
    "lupin-bun@1234567, lupin-bun@1234567",
    "lupin-bun@d670460b4b4aece5915caf5c68d12f560a9fe3e4, "
        + "lupin-bun@d670460b4b4aece5915caf5c68d12f560a9fe3e4",
    "lupin-bun@edited, lupin-bun@edited",
    "lupin-bun/2-egg@edited, lupin-bun/2-egg@edited",
    "7, 7"
  })
  void isPrintedInOneForm(String text, String canonical) {
    assertThat(Address.parse(text)).hasToString(canonical);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "", " ", "Lupin-bun", "λούπινο", "lupin bun", "lupin--bun", "-bun", "bun-", "lupin-bun@",
        "lupin-bun@-1", "lupin-bun@5.0", "lupin-bun@abc", "lupin-bun@12g4567", "lupin-bun@@5",
        "lupin-bun/", "/egg-free", "lupin-bun/12", "lupin-bun/1-2", "lupin-bun/a/b", "../secret",
        "lupin-bun@5/egg-free", "lupin-bun\u0000", "<script>",
        "lupin-bun@d670460b4b4aece5915caf5c68d12f560a9fe3e4d"
      })
  void isRefusedInASentenceWithARemedy(String text) {
    assertThatThrownBy(() -> Address.parse(text))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageMatching("(?s)[^\n]+\\.\n[^\n]+\\.");
  }

  @Test
  void isRefusedWhenItIsEndless() {
    assertThatThrownBy(() -> Address.parse("a".repeat(100_000)))
        .isInstanceOf(IllegalArgumentException.class)
        .satisfies(e -> assertThat(e.getMessage()).hasSizeLessThan(300));
  }

  @Test
  void printedAndReadBackIsTheSame() {
    Random random = new Random(7);
    for (int i = 0; i < 5_000; i++) {
      Address address = address(random);
      assertThat(Address.parse(address.toString())).isEqualTo(address);
    }
  }

  private static Address address(Random random) {
    Optional<String> variant =
        random.nextBoolean() ? Optional.of("v" + slug(random)) : Optional.empty();
    Address line = Address.latest(slug(random), variant);
    return switch (random.nextInt(4)) {
      case 0 -> line;
      case 1 -> line.at(random.nextInt(1_000_000));
      case 2 -> line.atCommit(hex(random, 7 + random.nextInt(34)));
      default -> new Address(line.formula(), line.variant(), Address.Point.EDITED);
    };
  }

  private static String slug(Random random) {
    StringBuilder slug = new StringBuilder();
    for (int i = 1 + random.nextInt(10); i > 0; i--) {
      slug.append("abcxyz0189".charAt(random.nextInt(10)));
      slug.append(i > 1 && random.nextInt(3) == 0 ? "-" : "");
    }
    return slug.toString();
  }

  private static String hex(Random random, int length) {
    StringBuilder hex = new StringBuilder();
    for (int i = 0; i < length; i++) {
      hex.append("0123456789abcdef".charAt(random.nextInt(16)));
    }
    return hex.toString();
  }

  @Test
  void saysWhichBranchHoldsIt() {
    assertThat(Address.parse("lupin-bun@3").branch()).isEqualTo("main");
    assertThat(Address.parse("lupin-bun/egg-free@3").branch())
        .isEqualTo("variant/lupin-bun/egg-free");
    assertThat(Address.parse("lupin-bun/egg-free@3").line()).isEqualTo("lupin-bun/egg-free");
  }

  @Test
  void cannotBeBuiltInAFormThatCouldNotBeRead() {
    Address line = Address.parse("lupin-bun");
    assertThatThrownBy(() -> line.at(1_000_000)).isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> line.at(-1)).isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> line.atCommit("4f2a91")).isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> line.atCommit("main")).isInstanceOf(IllegalArgumentException.class);
  }
}
