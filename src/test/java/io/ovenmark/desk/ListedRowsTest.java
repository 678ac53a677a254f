package io.ovenmark.desk;

import static org.assertj.core.api.Assertions.assertThat;

import io.ovenmark.notebook.Address;
import io.ovenmark.notebook.Survey;
import io.ovenmark.pantry.Nutrient;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.OptionalLong;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A listing that rests on what was kept says what one says that works everything out. */
class ListedRowsTest {
  @TempDir Path temporary;
  private LupinBench bench;

  @BeforeEach
  void setUpABench() {
    bench = new LupinBench(temporary);
  }

  @AfterEach
  void close() {
    bench.close();
  }

  private Path file() {
    return bench.fixture().directory().resolve(".git/ovenmark/list");
  }

  /** The list on a new desk. */
  private String list() {
    return Json.compact(new ListFormulas(new Desk(bench.fixture().open())).call());
  }

  private String listWithoutFile() throws IOException {
    Files.deleteIfExists(file());
    return list();
  }

  @Test
  void aSecondListingSaysTheSameFromTheFile() throws IOException {
    String first = listWithoutFile();
    byte[] kept = Files.readAllBytes(file());
    assertThat(list()).isEqualTo(first);
    assertThat(file()).hasBinaryContent(kept);
  }

  @Test
  void whateverChangesShowsInTheNextListing() throws IOException {
    list();
    bench.bun().set("water=200 g").revise("Wetter");
    assertThat(list()).contains("Wetter").isEqualTo(listWithoutFile());
    bench.fixture().bake(bench.bun().at(4), List.of(LupinBench.gummy()));
    assertThat(list()).isEqualTo(listWithoutFile());
    bench.fixture().relabel("lupin-flour", Nutrient.FIBRE, 30);
    assertThat(list()).isEqualTo(listWithoutFile());
    bench.fixture().variant(LupinBench.BUN, "egg-free").set("water=231 g").revise("Softer");
    assertThat(list()).contains("Softer").isEqualTo(listWithoutFile());
    bench.fixture().goal(
        "low-carb-bun",
        """
        {"name": "Stricter", "limits": [
          {"figure": "net_carbohydrate_g", "per": "piece", "at_most": 1}]}
        """);
    assertThat(list()).contains("Stricter").isEqualTo(listWithoutFile());
  }

  @Test
  void aDamagedOrForeignFileCountsAsNone() throws IOException {
    String first = list();
    byte[] kept = Files.readAllBytes(file());
    kept[kept.length / 2] ^= 1;
    Files.write(file(), kept);
    assertThat(list()).isEqualTo(first);
    Files.writeString(file(), "");
    assertThat(list()).isEqualTo(first);
  }

  @Test
  void aDamagedBakeIsToldEachTime() throws IOException {
    bench.fixture().edit("bakes/" + LupinBench.BUN + "/2026-03-01-2.json", "{");
    bench.fixture().git("commit", "-aqm", "Broken by an editor");
    String first = list();
    assertThat(first).contains("2026-03-01-2.json");
    assertThat(list()).isEqualTo(first);
  }

  @Test
  void anotherBuildOfTheProgramWorksEverythingOut() {
    Survey survey = new Survey(bench.desk().notebook());
    Address bun = Address.parse(LupinBench.BUN);
    ListedRows one = new ListedRows(survey, OptionalLong.of(1));
    one.begin();
    ListedRows.Row made = one.row(bench.desk(), bun, bench.bun().newest());
    one.end();
    ListedRows same = new ListedRows(survey, OptionalLong.of(1));
    ListedRows other = new ListedRows(survey, OptionalLong.of(2));
    assertThat(same.known()).isEqualTo(1);
    assertThat(other.known()).isZero();
    assertThat(other.row(bench.desk(), bun, bench.bun().newest())).isEqualTo(made);
  }

  @Test
  void theMarkOfABuildChangesWithItsFiles() throws IOException {
    Path program = Files.createDirectory(temporary.resolve("program"));
    Path part = Files.writeString(program.resolve("Part.class"), "one");
    long before = ProgramMark.of(program);
    assertThat(ProgramMark.of(program)).isEqualTo(before);
    Files.writeString(part, "other");
    assertThat(ProgramMark.of(program)).isNotEqualTo(before);
    assertThat(ProgramMark.find()).isPresent();
  }
}
