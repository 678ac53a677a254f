package io.ovenmark.publish.card;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.Media;
import io.ovenmark.publish.card.CardChoices.Paper;
import io.ovenmark.web.Chromium;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** Cards as a browser prints them. */
@ExtendWith(Chromium.class)
class CardOnPaperTest {
  private static final Pattern PDF_PAGE = Pattern.compile("/Type\\s*/Page[^s]");

  /** What lies outside the sheet, is cut off, or lies over something else. */
  private static final String MISPLACED =
      """
      () => {
        const found = [];
        const name = (each) => `${each.tagName} ${each.className} ${each.textContent.slice(0, 30)}`;
        const sheet = document.querySelector("main").getBoundingClientRect();
        for (const each of document.querySelectorAll("main *")) {
          for (const box of each.getClientRects()) {
            if (box.left < sheet.left - 1 || box.right > sheet.right + 1) {
              found.push(`outside: ${name(each)}`);
            }
          }
          const inline = getComputedStyle(each).display === "inline";
          if (!inline && each.clientWidth > 0 && each.scrollWidth > each.clientWidth + 1) {
            found.push(`cut off: ${name(each)}`);
          }
        }
        const apart = (elements) => {
          const boxes = elements.flatMap((each) =>
            [...each.getClientRects()].map((box) => [each, box]),
          );
          boxes.forEach(([one, a], i) =>
            boxes.slice(i + 1).forEach(([other, b]) => {
              const wide = Math.min(a.right, b.right) - Math.max(a.left, b.left);
              const high = Math.min(a.bottom, b.bottom) - Math.max(a.top, b.top);
              if (one !== other && wide > 1 && high > 1) {
                found.push(`over each other: ${name(one)} / ${name(other)}`);
              }
            }),
          );
        };
        apart([...document.querySelectorAll("header, section, footer")]);
        apart([...document.querySelectorAll("li, td, dt, dd, h2")]);
        return found;
      }
      """;

  private static int pages(Browser browser, Card card, Paper paper) {
    try (Page page = browser.newPage()) {
      page.setContent(CardHtml.of(card, paper));
      byte[] pdf = page.pdf(new Page.PdfOptions().setPreferCSSPageSize(true));
      return (int)
          PDF_PAGE.matcher(new String(pdf, StandardCharsets.ISO_8859_1)).results().count();
    }
  }

  @ParameterizedTest
  @CsvSource({
    "usual, A4, 1", "usual, LETTER, 1", "usual, INDEX, 2",
    "arabic, A4, 1", "arabic, LETTER, 1", "arabic, INDEX, 2",
    "greek, A4, 1", "greek, LETTER, 1", "greek, INDEX, 2",
    "unknown, A4, 1", "unknown, LETTER, 1", "unknown, INDEX, 2",
    "extreme, A4, 2", "extreme, LETTER, 2",
  })
  void aCardTakesNoMorePaperThanItNeeds(String card, Paper paper, int pages, Browser browser) {
    assertThat(pages(browser, HardCards.all().get(card), paper)).isEqualTo(pages);
  }

  @ParameterizedTest
  @EnumSource(Paper.class)
  void nothingIsCutOffAndNothingLiesOverAnother(Paper paper, Browser browser) {
    try (Page page = browser.newPage()) {
      page.setViewportSize(paper == Paper.INDEX ? 540 : 700, 900);
      page.emulateMedia(new Page.EmulateMediaOptions().setMedia(Media.PRINT));
      HardCards.all()
          .forEach(
              (name, card) -> {
                page.setContent(CardHtml.of(card, paper));
                assertThat((List<?>) page.evaluate(MISPLACED)).as(name).isEmpty();
              });
    }
  }

  @Test
  void nothingIsCutOffOnAPhone(Browser browser) {
    try (Page page = browser.newPage()) {
      page.setViewportSize(390, 844);
      for (Paper paper : Paper.values()) {
        HardCards.all()
            .forEach(
                (name, card) -> {
                  page.setContent(CardHtml.of(card, paper));
                  assertThat((List<?>) page.evaluate(MISPLACED)).as(name).isEmpty();
                });
      }
    }
  }

  /** On the index card the amounts stand on the front and what to do on the back. */
  @Test
  void theIndexCardIsTurnedBetweenAmountsAndMethod(Browser browser) {
    try (Page page = browser.newPage()) {
      page.emulateMedia(new Page.EmulateMediaOptions().setMedia(Media.PRINT));
      page.setContent(CardHtml.of(HardCards.usual(), Paper.INDEX));
      String breakAfter = "element => getComputedStyle(element).breakAfter";

      assertThat(page.locator(".front").evaluate(breakAfter)).isEqualTo("page");
      assertThat(page.locator(".front").innerText()).contains("Ingredients", "A piece");
      assertThat(page.locator(".back").innerText()).contains("Method", "Oven", "To mind");
    }
  }
}
