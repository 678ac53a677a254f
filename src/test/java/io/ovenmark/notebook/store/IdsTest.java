package io.ovenmark.notebook.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.NullSource;
import org.junit.jupiter.params.provider.ValueSource;

class IdsTest {
  private static final String HEX = "d670460b4b4aece5915caf5c68d12f560a9fe3e4";

  /** Source: Pro Git (Chacon, Straub), chapter "Git Internals - Git Objects"; Git's empty blob. */
  @ParameterizedTest
  @CsvSource({
    "'test content\n', d670460b4b4aece5915caf5c68d12f560a9fe3e4",
    "'version 1\n', 83baae61804e65cc73a7201a7252750c76066a30",
    "'', e69de29bb2d1d6434b8b29ae775ad8c2e48c5391"
  })
  void aContentHasThePublishedId(String content, String id) {
    assertThat(BlobContent.id(RepositoryFixture.bytes(content))).isEqualTo(new BlobId(id));
  }

  @ParameterizedTest
  @NullSource
  @ValueSource(strings = {"", "d670460b4b", HEX + "0", "g670460b4b4aece5915caf5c68d12f560a9fe3e4"})
  void refuseWhatIsNotFortyDigits(String hex) {
    assertThatThrownBy(() -> new CommitId(hex)).isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> new BlobId(hex)).isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void areLoweredAbbreviatedAndOrdered() {
    assertThat(new CommitId(HEX.toUpperCase(Locale.ROOT))).hasToString(HEX);
    assertThat(new CommitId(HEX).abbreviated()).isEqualTo("d670460b4b");
    assertThat(new BlobId(HEX).abbreviated()).isEqualTo("d670460b4b");
    assertThat(new BlobId("0" + HEX.substring(1))).isLessThan(new BlobId(HEX));
  }
}
