package io.ovenmark.web;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.BoundingBox;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@ExtendWith(Chromium.class)
class PinsTest {
  private static final String BUN = "/formulas/seeded-lupin-bun";

  @ParameterizedTest
  @CsvSource({
    "'', seeded-lupin-bun@4, seeded-lupin-bun@5",
    "?line=egg-free, seeded-lupin-bun/egg-free@4, seeded-lupin-bun/egg-free@5",
    "?a=1, seeded-lupin-bun@1, seeded-lupin-bun@5",
    "?a=3&b=egg-free@4, seeded-lupin-bun@3, seeded-lupin-bun/egg-free@4"
  })
  void pinsStandWhereTheAddressSaysOrOnTheTwoNewest(
      String query, String from, String to, Browser browser) {
    try (Visit visit = Visit.of(RunningBench.FULL, browser)) {
      visit.to(BUN + query);
      assertThat(pin(visit, "from").inputValue()).isEqualTo(from);
      assertThat(pin(visit, "to").inputValue()).isEqualTo(to);
    }
  }

  private static Locator pin(Visit visit, String side) {
    return visit.at("input[name='pin-" + side + "']:checked");
  }

  @Test
  void theComparisonAnswersInSentenceLinesFiguresAndBakes(Browser browser) {
    try (Visit visit = Visit.of(RunningBench.FULL, browser)) {
      visit.to(BUN + "?a=2&b=3");
      String answer = visit.at(".answer").innerText().replace('\u00a0', ' ');
      assertThat(answer)
          .contains("Defatted soy flour down 40 g")
          .contains("−32")
          .contains("5 more unchanged")
          .contains("What moved net carbohydrate")
          .contains("190 °C", "205 °C")
          .contains("gummy crumb", "even crumb")
          .contains("cannot be credited to one of them");
      assertThat(visit.at(".method ins").allTextContents()).isNotEmpty();
      assertThat(visit.at(".bake img, .bake svg.tray").count()).isEqualTo(2);
    }
  }

  @Test
  void fromTheListToAMovedPinByKeyboardAlone(Browser browser) {
    try (Visit visit = Visit.of(RunningBench.FULL, browser)) {
      visit.to("/");
      Page page = visit.page();
      page.keyboard().press("Tab");
      assertThat(focused(page)).isEqualTo("Skip to the content");
      page.keyboard().press("Enter");
      tabTo(page, "Seeded lupin bun");
      page.keyboard().press("Enter");
      visit.settled();
      page.waitForURL("**" + BUN);
      visit.settled();
      assertThat(focused(page)).isEqualTo("Seeded lupin bun");
      tabTo(page, "Compare from revision 4, Twice the seed, 12 Mar");
      page.keyboard().press("ArrowDown");
      page.waitForURL("**" + BUN + "?a=egg-free@5&b=5");
      page.keyboard().press("ArrowDown");
      page.waitForURL("**" + BUN + "?a=egg-free@4&b=5");
      page.keyboard().press("ArrowDown");
      page.waitForURL("**" + BUN + "?a=3&b=5");
      visit.settled();
      assertThat(focused(page)).startsWith("Compare from revision 3");
      assertThat(visit.at(".between .head.from a").innerText()).isEqualTo("3");
      page.keyboard().press("Tab");
      assertThat(focused(page)).startsWith("Worksheet of").isNotEmpty();
    }
  }

  private static String focused(Page page) {
    return (String)
        page.evaluate(
            "document.activeElement.getAttribute('aria-label')"
                + " ?? document.activeElement.textContent.trim()");
  }

  private static void tabTo(Page page, String name) {
    for (int i = 0; i < 60; i++) {
      page.keyboard().press("Tab");
      if (focused(page).equals(name)) {
        return;
      }
    }
    throw new AssertionError("never came to " + name + ", but to " + focused(page));
  }

  @Test
  void movingAPinSeveralStepsIsOneStepBack(Browser browser) {
    try (Visit visit = Visit.of(RunningBench.FULL, browser)) {
      visit.to(BUN + "?a=3&b=4");
      pin(visit, "to").focus();
      visit.page().keyboard().press("ArrowUp");
      visit.page().waitForURL("**b=5");
      visit.page().keyboard().press("ArrowUp");
      visit.page().waitForURL("**b=1");
      visit.settled();
      visit.page().goBack();
      visit.page().waitForURL("**b=4");
      visit.settled();
      assertThat(visit.address()).isEqualTo(BUN + "?a=3&b=4");
      assertThat(visit.at(".between .head.to a").innerText()).isEqualTo("4");
      visit.page().goForward();
      visit.page().waitForURL("**b=1");
      visit.settled();
      assertThat(visit.at(".between .head.to a").innerText()).isEqualTo("1");
    }
  }

  @Test
  void aPinCanBeDraggedAlongTheSpine(Browser browser) {
    try (Visit visit = Visit.of(RunningBench.FULL, browser)) {
      visit.to(BUN + "?a=4&b=5");
      BoundingBox pin = visit.at(".pin.to:has(input:checked)").boundingBox();
      Locator fourth = visit.at(".revision:has(input[value='seeded-lupin-bun@4'])").first();
      BoundingBox goal = fourth.boundingBox();
      visit.page().mouse().move(pin.x + 8, pin.y + 8);
      visit.page().mouse().down();
      visit.page().mouse().move(pin.x + 8, goal.y + goal.height / 2 - 4);
      visit.page().mouse().move(pin.x + 8, goal.y + goal.height / 2);
      visit.page().mouse().up();
      visit.settled();
      assertThat(visit.address()).isEqualTo(BUN + "?a=4&b=4");
      assertThat(visit.text()).contains("Both pins stand on the same revision.");
    }
  }

  @Test
  void aBookmarkShowsTheSameAgain(Browser browser) {
    try (Visit visit = Visit.of(RunningBench.FULL, browser)) {
      visit.to(BUN + "?a=1&b=3");
      visit.at(".figures select").selectOption("per_batch");
      visit.settled();
      visit.at(".causes select").selectOption("protein_g");
      visit.settled();
      String address = visit.address();
      assertThat(address).isEqualTo(BUN + "?a=1&b=3&per=per_batch&figure=protein_g");
      String shown = visit.text();
      visit.page().reload();
      visit.settled();
      assertThat(visit.text()).isEqualTo(shown);
      assertThat(visit.at(".causes h2").innerText()).isEqualTo("What moved protein");
      visit.to(address);
      assertThat(visit.text()).isEqualTo(shown);
    }
  }

  @Test
  void backTakesAChosenFigureBackToo(Browser browser) {
    try (Visit visit = Visit.of(RunningBench.FULL, browser)) {
      visit.to(BUN + "?a=1&b=3");
      visit.at(".causes select").selectOption("protein_g");
      visit.page().waitForURL("**figure=protein_g");
      visit.settled();
      visit.page().goBack();
      visit.page().waitForURL("**b=3");
      visit.settled();
      assertThat(visit.at(".causes select").inputValue()).isEqualTo("net_carbohydrate_g");
      assertThat(visit.at(".causes h2").innerText()).isEqualTo("What moved net carbohydrate");
    }
  }

  @Test
  void backReturnsToTheListAndItsPlace(Browser browser) {
    try (Visit visit = Visit.of(RunningBench.FULL, browser, Visit.PHONE)) {
      visit.to("/");
      Locator link = visit.at("a.title:text('Seeded lupin bun')");
      link.scrollIntoViewIfNeeded();
      Object before = visit.page().evaluate("scrollY");
      link.click();
      visit.page().waitForURL("**" + BUN);
      visit.settled();
      assertThat(visit.page().evaluate("scrollY")).isEqualTo(0);
      visit.page().goBack();
      visit.page().waitForURL("**/");
      visit.settled();
      assertThat(visit.at("h1").innerText()).isEqualTo("Saltmarsh bench");
      assertThat(visit.page().evaluate("scrollY")).isEqualTo(before);
    }
  }

  @Test
  void theTwoSidesCanBeSwapped(Browser browser) {
    try (Visit visit = Visit.of(RunningBench.FULL, browser)) {
      visit.to(BUN + "?a=2&b=3");
      visit.at("button:text('Swap A and B')").click();
      visit.page().waitForURL("**?a=3&b=2");
      visit.settled();
      assertThat(visit.at(".between .head.from a").innerText()).isEqualTo("3");
    }
  }

  @Test
  void theFileEditedByHandIsComparedLikeARevision(Browser browser) {
    try (Visit visit = Visit.of(RunningBench.FULL, browser)) {
      visit.to("/formulas/wheat-bun");
      visit.at("a:text('Edited by hand, not yet a revision')").click();
      visit.page().waitForURL("**/formulas/wheat-bun?a=1&b=edited");
      visit.settled();
      assertThat(visit.at(".answer").innerText()).contains("+5");
      visit.to("/worksheet/wheat-bun@edited");
      assertThat(visit.text()).contains("it would become 2");
    }
  }

  @Test
  void onAPhoneTheSpineIsFoldedAndItsPinsAreLarge(Browser browser) {
    try (Visit visit = Visit.of(RunningBench.FULL, browser, Visit.PHONE)) {
      visit.to(BUN + "?a=2&b=3");
      assertThat(visit.at(".revisions").isVisible()).isFalse();
      visit.at(".spine > summary").click();
      visit.at(".revisions").waitFor();
      BoundingBox pin = visit.at(".pin.from").first().boundingBox();
      assertThat(pin.width).isGreaterThanOrEqualTo(44);
      assertThat(pin.height).isGreaterThanOrEqualTo(44);
      visit.at(".pin.from:has(input[value='seeded-lupin-bun@1'])").tap();
      visit.page().waitForURL("**?a=1&b=3");
      visit.settled().assertFits();
    }
  }

  @Test
  void restoredAndPublishedRevisionsSaySo(Browser browser) {
    try (Visit visit = Visit.of(RunningBench.FULL, browser)) {
      visit.to(BUN);
      assertThat(visit.at(".revision").first().innerText())
          .contains("published: The breakfast bun of this winter", "takes 3 back");
      assertThat(visit.at(".revision.branch").count()).isEqualTo(2);
    }
  }
}
