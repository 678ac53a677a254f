package io.ovenmark.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import io.ovenmark.desk.Desk;
import io.ovenmark.desk.Json;
import io.ovenmark.desk.TellStory;
import io.ovenmark.notebook.Address;
import io.ovenmark.notebook.Notebook;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class StoryCommandTest {
  @TempDir Path folder;
  private Bench bench;

  @BeforeEach
  void begin() {
    bench = Saltmarsh.bench(folder);
  }

  @Test
  void theOutlineTellsStepByStepAndEndsWithTheCautions() {
    String out = bench.must("story", "seeded-lupin-bun", "--steps", "1,2").out();

    assertThat(out)
        .contains("As chosen here; keep it with --keep.")
        .contains("seeded-lupin-bun@1 · ")
        .contains("Changed: ")
        .contains("1 piece in 1 bake, up to 41 mm high")
        .contains("Photo: none")
        .contains("At the end: the card of seeded-lupin-bun@2")
        .contains("71 °C");
  }

  @Test
  void ownWordsAreKeptAndLaterCallsStartFromThem() {
    bench.must(
        "story", "seeded-lupin-bun", "--steps", "1,2", "--title", "A bun without wheat",
        "--words", "2=It stands.", "--heading", "1=Too dry", "--keep");

    String out = bench.must("story", "seeded-lupin-bun", "--words", "1=It cracked.").out();
    assertThat(out)
        .startsWith("A bun without wheat\n")
        .contains("1. Too dry", "“It cracked.”", "“It stands.”");
    assertThat(bench.must("story", "seeded-lupin-bun").out())
        .contains("As the notebook keeps it.")
        .doesNotContain("It cracked.");
    assertThat(bench.must("story", "seeded-lupin-bun", "--proposed").out())
        .contains("A bun without wheat")
        .contains("These are the bakes that taught something");
    bench.must("undo");
    assertThat(bench.must("story", "seeded-lupin-bun").out())
        .doesNotContain("A bun without wheat");
  }

  @Test
  void thePageGoesToTheOutputAndFilesIntoAFolder() throws IOException {
    assertThat(bench.must("story", "seeded-lupin-bun", "--form", "page").out())
        .startsWith("<!DOCTYPE html>")
        .doesNotContain("<script");

    Path video = folder.resolve("video");
    bench.must("story", "seeded-lupin-bun", "--form", "pictures", "--into", video.toString());
    BufferedImage title = ImageIO.read(video.resolve("01-title.png").toFile());
    assertThat(title.getWidth()).isEqualTo(1920);
    assertThat(title.getHeight()).isEqualTo(1080);
    assertThat(Files.readString(video.resolve("what-they-show.txt"))).startsWith("01-title.png\n");

    Bench.Result again =
        bench.run("story", "seeded-lupin-bun", "--form", "pictures", "--into", video.toString());
    assertThat(again.code()).isNotZero();
    assertThat(again.said()).contains("01-title.png", "--replace");

    bench.must("story", "seeded-lupin-bun", "--form", "markdown", "--into", video.toString());
    assertThat(Files.readString(video.resolve("story.md"))).startsWith("# ");
  }

  @Test
  void whatDoesNotGoTogetherIsSaid() {
    for (List<String> wrong :
        List.of(
            List.of("--form", "pictures"),
            List.of("--into", "x"),
            List.of("--form", "film"),
            List.of("--steps", "1,99"),
            List.of("--steps", "1", "--words", "2=x"),
            List.of("--steps", "1", "--proposed"))) {
      List<String> all = new ArrayList<>(List.of("story", "seeded-lupin-bun"));
      all.addAll(wrong);
      Bench.Result result = bench.run(all.toArray(String[]::new));
      assertThat(result.code()).as(wrong.toString()).isIn(1, 2);
      assertThat(result.err()).as(wrong.toString()).isNotBlank();
    }
  }

  @Test
  void theJsonIsTheAnswerOfTheDesk() throws JsonProcessingException {
    ObjectMapper mapper = new ObjectMapper();
    JsonNode printed = mapper.readTree(bench.must("story", "seeded-lupin-bun", "--json").out());
    try (Desk desk = new Desk(Notebook.open(bench.folder()))) {
      TellStory tell = new TellStory(desk);
      assertThat(printed)
          .isEqualTo(
              mapper.readTree(
                  Json.compact(tell.call(tell.plan(Address.parse("seeded-lupin-bun"))))));
    }
  }
}
