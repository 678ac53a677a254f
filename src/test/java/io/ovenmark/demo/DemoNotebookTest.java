package io.ovenmark.demo;

import static org.assertj.core.api.Assertions.assertThat;

import io.ovenmark.demo.DemoEvent.BakeRecorded;
import io.ovenmark.notebook.Address;
import io.ovenmark.notebook.Notebook;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class DemoNotebookTest {
  @TempDir private static Path folder;
  private static final List<Integer> STEPS = new ArrayList<>();

  @BeforeAll
  static void build() {
    DemoNotebook.create(folder, (done, total) -> STEPS.add(total - done));
  }

  @Test
  void tellsItsProgressDownToTheLastStep() {
    assertThat(STEPS).hasSameSizeAs(DemoScript.load().events()).endsWith(2, 1, 0);
  }

  @Test
  void holdsEachRevisionAsTheScriptTellsIt() {
    Told told = new Told(DemoScript.load());
    try (Notebook notebook = Notebook.open(folder)) {
      told.formulas()
          .forEach(
              (address, formula) -> {
                Address made =
                    Address.latest(address.formula(), address.variant()).at(address.revision());
                assertThat(notebook.formula(notebook.revision(made)))
                    .as(address.toString())
                    .isEqualTo(formula);
              });
    }
  }

  @Test
  void hasThePicturesOfTheMainLineInItsFolder() {
    for (DemoEvent event : DemoScript.load().events()) {
      if (event instanceof BakeRecorded baked && baked.address().variant().isEmpty()) {
        assertThat(folder.resolve(baked.bake().path())).exists();
        for (DemoPicture picture : baked.pictures()) {
          assertThat(Files.isRegularFile(folder.resolve(picture.file()))).isTrue();
        }
      }
    }
  }
}
