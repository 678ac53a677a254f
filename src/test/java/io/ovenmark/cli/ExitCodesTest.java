package io.ovenmark.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ExitCodesTest {
  @TempDir Path folder;

  @Test
  void aFolderWithoutNotebookIsRefused() {
    Bench.Result result = new Bench(folder).run("list");
    assertThat(result.code()).isEqualTo(1);
    assertThat(result.err())
        .contains("ovenmark: There is no notebook in this folder.")
        .contains("hint:  Make one with: ovenmark new --notebook");
  }

  @Test
  void wrongUsageIsTwo() {
    Bench.Result result = new Bench(folder).run("lst");
    assertThat(result.code()).isEqualTo(2);
    assertThat(result.err()).contains("See: ovenmark --help");
  }
}
