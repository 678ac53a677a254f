package io.ovenmark.web;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.Download;
import com.microsoft.playwright.FrameLocator;
import com.microsoft.playwright.options.ColorScheme;
import io.ovenmark.demo.DemoNotebook;
import io.ovenmark.desk.StoryOrder;
import io.ovenmark.desk.TellStory;
import io.ovenmark.notebook.Address;
import io.ovenmark.story.StoryPlan;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@ExtendWith(Chromium.class)
class StoryPagesTest {
  private static OwnBench bench;

  @BeforeAll
  static void begin() {
    bench = OwnBench.with(folder -> DemoNotebook.create(folder, (done, total) -> {}));
  }

  @AfterAll
  static void end() {
    assertThat(bench.faults()).isEmpty();
    bench.close();
  }

  private static StoryPlan kept(String line) {
    return new TellStory(bench.desk()).plan(Address.parse(line));
  }

  @ParameterizedTest
  @CsvSource({
    "1440, LIGHT, seeded-lupin-bun/egg-free",
    "390, DARK, seeded-lupin-bun/dairy-free"
  })
  void whatIsChosenShowsInThePreviewIsKeptHereAndThenInTheNotebook(
      int width, ColorScheme colours, String line, Browser browser) {
    try (Visit visit = Visit.on(bench.viewer(), browser, width, colours)) {
      visit.to("/story/" + line);
      FrameLocator frame = visit.page().frameLocator(".story-frame");
      assertThat(frame.locator("h1")).containsText("Seeded lupin bun");
      assertThat(frame.locator("body")).containsText("To mind");
      visit.assertFits();
      visit.assertAccessible();

      visit.at("#story-title").fill("Without <i>egg</i> or milk");
      visit.at("#story-tell-1").uncheck();
      visit.at(".story-words summary").last().click();
      visit.at(".story-words[open] textarea").fill("It stays soft for a day.");
      assertThat(frame.locator("h1")).hasText("Without <i>egg</i> or milk");
      assertThat(frame.locator(".own")).hasText("It stays soft for a day.");
      assertThat(visit.at(".story-saving")).containsText("This browser holds the changes");
      visit.assertFits();
      visit.assertAccessible();
      assertThat(kept(line).title()).isEmpty();

      visit.to("/");
      visit.to("/story/" + line);
      assertThat(visit.at("#story-title")).hasValue("Without <i>egg</i> or milk");
      assertThat(frame.locator("h1")).hasText("Without <i>egg</i> or milk");
      visit.at("button[type=submit]").click();
      assertThat(visit.at(".story-saving")).containsText("As the notebook keeps it.");
      StoryPlan plan = kept(line);
      assertThat(plan.title()).contains("Without <i>egg</i> or milk");
      assertThat(plan.steps()).noneMatch(step -> step.revision() == 1);
      assertThat(plan.steps())
          .anyMatch(step -> step.words().equals(Optional.of("It stays soft for a day.")));
    }
  }

  @Test
  void thePublishedPageIsAccessibleAndFits(Browser browser) {
    for (int width : List.of(Visit.DESK, Visit.PHONE)) {
      try (Visit visit = Visit.on(bench.viewer(), browser, width)) {
        visit.to("/story/seeded-lupin-bun");
        String page = visit.at(".story-preview a.main").getAttribute("href");
        visit.page().navigate(bench.viewer().address().resolve(page).toString());
        assertThat(visit.page().locator(".steps > li")).hasCount(9);
        visit.assertFits();
        visit.assertAccessible();
      }
    }
  }

  @Test
  void filesAreDownloadedAndPicturesSayWhatTheyShow(Browser browser) {
    try (Visit visit = Visit.on(bench.viewer(), browser, Visit.DESK)) {
      visit.to("/story/seeded-lupin-bun");
      Download markdown =
          visit
              .page()
              .waitForDownload(() -> visit.at("a:has-text('Download as Markdown')").click());
      assertThat(markdown.suggestedFilename()).isEqualTo("seeded-lupin-bun-story.zip");
      visit.at(".story-strip img").first().scrollIntoViewIfNeeded();
      visit.page()
          .waitForCondition(
              () ->
                  Boolean.TRUE.equals(
                      visit.at(".story-strip img").first()
                          .evaluate("image => image.complete && image.naturalWidth === 1920")));
      assertThat((Boolean) visit.at(".story-strip img")
              .evaluateAll("images => images.every(image => image.alt.length > 20)"))
          .isTrue();
    }
  }

  @Test
  void sentencesFollowThePreferredUnits(Browser browser) {
    try (Visit visit = Visit.on(bench.viewer(), browser, Visit.DESK)) {
      visit.to("/story/seeded-lupin-bun");
      FrameLocator frame = visit.page().frameLocator(".story-frame");
      assertThat(frame.locator(".steps")).containsText("Lupin flour down 140 g");
      visit.page().evaluate("import('/preferences.js').then(m => m.prefer({mass: 'oz'}))");
      assertThat(frame.locator(".steps")).containsText("Lupin flour down 4.94 oz");
      assertThat(visit.at(".story-saving")).containsText("Not kept yet");
    }
  }

  @Test
  void whoeverKeepsOverAnotherOnesStoryIsToldAndLosesNothing(Browser browser) {
    try (Visit visit = Visit.on(bench.viewer(), browser, Visit.DESK)) {
      visit.to("/story/sesame-crispbread");
      TellStory tell = new TellStory(bench.desk());
      Address bread = Address.parse("sesame-crispbread");
      tell.keep(
          tell.plan(bread, new StoryOrder("Theirs", null, null, null, null, null)),
          null,
          RunningBench.by());

      visit.at("#story-title").fill("Mine");
      visit.at("button[type=submit]").click();
      assertThat(visit.at(".story-saving .refused")).containsText("meanwhile");
      visit.expectRefusal();
      assertThat(kept("sesame-crispbread").title()).contains("Theirs");
      assertThat(visit.at("#story-title")).hasValue("Mine");
      visit.assertAccessible();

      visit.at("button:has-text('with my choices over it')").click();
      visit.at("button[type=submit]").click();
      assertThat(visit.at(".story-saving")).containsText("As the notebook keeps it.");
      assertThat(kept("sesame-crispbread").title()).contains("Mine");
    }
  }
}
