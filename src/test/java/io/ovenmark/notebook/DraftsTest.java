package io.ovenmark.notebook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class DraftsTest {
  private static final String BUN = "{\"name\": \"Bün \\u0000 \\\"½\\\"\"}";

  @TempDir private Path temporary;
  private NotebookFixture fixture;
  private Drafts drafts;

  @BeforeEach
  void open() {
    fixture = new NotebookFixture(temporary);
    drafts = new Drafts(fixture.notebook());
  }

  @AfterEach
  void close() {
    fixture.close();
  }

  @Test
  void whatWasTypedIsThereAfterTheNotebookIsOpenedAgain() {
    Draft begun = drafts.begin("formula", BUN, fixture.by());
    Draft saved = drafts.save(begun.id(), begun.version(), BUN + " ", fixture.by());
    assertThat(saved.version()).isEqualTo(2);
    assertThat(new Drafts(fixture.open()).find(begun.id())).contains(saved);
  }

  @Test
  void draftsAreListedByKindLastSavedFirst() {
    Draft first = drafts.begin("formula", "1", fixture.by());
    Draft second = drafts.begin("formula", "2", fixture.by());
    drafts.begin("bake", "3", fixture.by());
    Draft again = drafts.save(first.id(), 1, "4", fixture.by());
    assertThat(drafts.all("formula")).containsExactly(again, second);
    assertThat(drafts.all("nothing")).isEmpty();
  }

  @Test
  void aSaveThatIsBasedOnAnOlderVersionIsRefusedAndChangesNothing() {
    Draft begun = drafts.begin("formula", "1", fixture.by());
    Draft here = drafts.save(begun.id(), 1, "typed here", fixture.by());
    assertThatThrownBy(() -> drafts.save(begun.id(), 1, "typed there", fixture.by()))
        .isInstanceOfSatisfying(
            Refusal.class, e -> assertThat(e.reason()).isEqualTo(Refusal.Reason.CONFLICT));
    assertThatThrownBy(() -> drafts.discard(begun.id(), 1)).isInstanceOf(Refusal.class);
    assertThat(drafts.find(begun.id())).contains(here);
  }

  @Test
  void aDraftThatWasThrownAwayIsNotSavedAnyMore() {
    Draft begun = drafts.begin("formula", "1", fixture.by());
    assertThat(drafts.discard(begun.id(), 1)).isEqualTo(begun);
    assertThat(drafts.find(begun.id())).isEmpty();
    assertThatThrownBy(() -> drafts.save(begun.id(), 1, "2", fixture.by()))
        .isInstanceOfSatisfying(
            Refusal.class, e -> assertThat(e.reason()).isEqualTo(Refusal.Reason.NOT_FOUND));
  }

  @Test
  void ofManyWritersAtOnceEachVersionIsSavedByOne() throws Exception {
    Draft begun = drafts.begin("formula", "0", fixture.by());
    By by = fixture.by();
    AtomicInteger saved = new AtomicInteger();
    Callable<Void> writer =
        () -> {
          Drafts own = new Drafts(fixture.notebook());
          for (int i = 0; i < 25; i++) {
            long version = own.find(begun.id()).orElseThrow().version();
            try {
              own.save(begun.id(), version, "from " + version, by);
              saved.incrementAndGet();
            } catch (Refusal refusal) {
              assertThat(refusal.reason()).isEqualTo(Refusal.Reason.CONFLICT);
            }
          }
          return null;
        };
    ExecutorService threads = Executors.newFixedThreadPool(4);
    for (var done : threads.invokeAll(List.of(writer, writer, writer, writer))) {
      done.get();
    }
    threads.shutdown();
    Draft last = drafts.find(begun.id()).orElseThrow();
    assertThat(last.version()).isEqualTo(1 + saved.get());
    assertThat(last.content()).isEqualTo("from " + (last.version() - 1));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"", "../notebook", "formula-", "formula-../../x", "formula-0123456789abcdeF", "\0"})
  void namesThatAreNoneReachNoFile(String id) {
    assertThat(drafts.find(id)).isEmpty();
    assertThatThrownBy(() -> drafts.save(id, 1, "x", fixture.by())).isInstanceOf(Refusal.class);
  }

  @Test
  void aDamagedFileIsLeftOutAndLeftAlone() throws IOException {
    Draft whole = drafts.begin("formula", "whole", fixture.by());
    Draft cut = drafts.begin("formula", "cut", fixture.by());
    Path file =
        fixture.directory().resolve(".git/ovenmark/drafts").resolve(cut.id() + ".json");
    String half = Files.readString(file).substring(0, 20);
    Files.writeString(file, half);
    assertThat(drafts.all("formula")).containsExactly(whole);
    assertThat(file).hasContent(half);
  }

  @Test
  void aDraftLongerThanAMegabyteIsRefused() {
    String tooLong = "x".repeat(Drafts.LONGEST + 1);
    assertThatThrownBy(() -> drafts.begin("formula", tooLong, fixture.by()))
        .isInstanceOf(Refusal.class)
        .hasMessageContaining("megabyte");
  }

  @Test
  void draftsAreNoPartOfHistory() {
    drafts.begin("formula", "x", fixture.by());
    assertThat(fixture.git("status", "--porcelain")).isEmpty();
  }
}
