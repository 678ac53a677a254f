package io.ovenmark.publish.card;

import static j2html.TagCreator.attrs;
import static j2html.TagCreator.bdi;
import static j2html.TagCreator.body;
import static j2html.TagCreator.dd;
import static j2html.TagCreator.div;
import static j2html.TagCreator.dl;
import static j2html.TagCreator.document;
import static j2html.TagCreator.dt;
import static j2html.TagCreator.each;
import static j2html.TagCreator.footer;
import static j2html.TagCreator.h1;
import static j2html.TagCreator.h2;
import static j2html.TagCreator.head;
import static j2html.TagCreator.header;
import static j2html.TagCreator.html;
import static j2html.TagCreator.iff;
import static j2html.TagCreator.img;
import static j2html.TagCreator.li;
import static j2html.TagCreator.main;
import static j2html.TagCreator.meta;
import static j2html.TagCreator.ol;
import static j2html.TagCreator.p;
import static j2html.TagCreator.rawHtml;
import static j2html.TagCreator.section;
import static j2html.TagCreator.small;
import static j2html.TagCreator.style;
import static j2html.TagCreator.table;
import static j2html.TagCreator.tbody;
import static j2html.TagCreator.td;
import static j2html.TagCreator.text;
import static j2html.TagCreator.title;
import static j2html.TagCreator.tr;
import static j2html.TagCreator.ul;

import j2html.tags.ContainerTag;
import j2html.tags.DomContent;
import j2html.tags.specialized.BdiTag;
import j2html.tags.specialized.HeaderTag;
import j2html.tags.specialized.SectionTag;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * A card as one page of HTML that needs nothing else: its style and its picture are within it, and
 * nothing of it runs. Every text is escaped by the library that writes it.
 */
public final class CardHtml {
  private static final String STYLE = ownStyle();

  /** Names with more signs are written smaller. */
  private static final int LONG_NAME = 48;

  /** Signs of an ingredient's name and note that go in a line beside the method, roughly. */
  private static final int SIGNS_A_LINE = 28;

  /** More lines than these do not go on one page beside the method. */
  private static final int MOST_LINES = 32;

  private CardHtml() {}

  /**
   * Writes it.
   *
   * @param card the card
   * @param paper the paper that it is printed on
   * @return the page
   */
  public static String of(Card card, CardChoices.Paper paper) {
    String page = "@page { size: " + paper.size() + "; margin: " + paper.margin() + "; }\n";
    return document(
            html(
                    head(
                        meta().withCharset("utf-8"),
                        meta()
                            .withName("viewport")
                            .withContent("width=device-width, initial-scale=1"),
                        title(card.name()),
                        style(rawHtml(page + STYLE))),
                    body(
                        attrs(".paper-" + paper.key() + (isLong(card) ? ".many" : "")),
                        main(
                                heading(card),
                                div(attrs(".front"), ingredients(card), figures(card)),
                                div(
                                    attrs(".back"),
                                    div(attrs(".steps"), method(card), oven(card)),
                                    storage(card),
                                    mind(card)),
                                footer(p(CardText.origin(card))).attr("dir", "ltr"))
                            .attr("dir", Scripts.isRightToLeft(card.name()) ? "rtl" : "ltr")
                            .attr("aria-label", "Card of " + card.name())))
                .withLang("en"))
        + "\n";
  }

  /** Whether there are so many ingredients that they are better set in two columns. */
  private static boolean isLong(Card card) {
    int lines = 0;
    for (Card.Ingredient each : card.ingredients()) {
      int signs = each.name().length() + each.note().map(String::length).orElse(0);
      lines += 1 + signs / SIGNS_A_LINE;
    }
    return lines > MOST_LINES;
  }

  /** A text of any script runs in its own direction. */
  private static <T extends ContainerTag<T>> T words(T tag) {
    return tag.attr("dir", "auto");
  }

  /** A text within a line, which moves nothing beside it; a number stays with its unit. */
  private static BdiTag apart(String text) {
    return bdi(Scripts.unbroken(text));
  }

  private static HeaderTag heading(Card card) {
    boolean isLong = card.name().length() > LONG_NAME;
    return header(
        div(
            words(h1(card.name())).withCondClass(isLong, "long"),
            iff(
                card.description(),
                text -> words(p(Scripts.unbroken(text))).withClass("description")),
            p(apart(card.yield())).withClass("yield")),
        iff(
            card.photo(),
            photo -> img().withSrc(photo.dataAddress()).withAlt(photo.alternative())));
  }

  private static SectionTag ingredients(Card card) {
    return section(
        attrs(".ingredients"),
        h2("Ingredients"),
        table(
            tbody(
                each(
                    card.ingredients(),
                    each ->
                        tr(
                            td(apart(each.mass())).withClass("mass"),
                            td(
                                apart(each.name()),
                                iff(
                                    each.note(),
                                    note ->
                                        each(text(" "), small(apart(note)).withClass("note")))),
                            td(each(each.measure().stream().toList(), CardHtml::apart))
                                .withClass("measure"))))));
  }

  private static SectionTag method(Card card) {
    return section(
        h2("Method"),
        card.method().isEmpty()
            ? p("Not stated.")
            : ol(each(card.method(), step -> words(li(Scripts.unbroken(step))))));
  }

  private static SectionTag oven(Card card) {
    return section(
        h2("Oven"),
        card.stages().isEmpty()
            ? p("Not stated.")
            : ul(each(card.stages(), stage -> li(withCommas(stage.parts()))))
                .withClass("oven"));
  }

  private static DomContent withCommas(List<String> parts) {
    List<DomContent> shown = new ArrayList<>();
    for (String part : parts) {
      shown.add(text(shown.isEmpty() ? "" : ", "));
      shown.add(apart(part));
    }
    return each(shown.toArray(DomContent[]::new));
  }

  private static SectionTag figures(Card card) {
    return section(
            attrs(".figures"),
            h2("A piece"),
            dl(
                each(
                    card.figures(),
                    fact ->
                        div(
                            dt(capital(fact.label())),
                            dd(Scripts.unbroken(fact.text()))
                                .withCondClass(!fact.known(), "partly")))),
            p(each(card.basis(), sentence -> each(apart(sentence), text(" ")))).withClass("basis"))
        .attr("dir", "ltr");
  }

  private static SectionTag mind(Card card) {
    return section(
            attrs(".mind"),
            h2("To mind"),
            ul(each(card.cautions(), caution -> words(li(Scripts.unbroken(caution))))))
        .attr("dir", "ltr");
  }

  private static DomContent storage(Card card) {
    return iff(
        card.storage(),
        text -> section(attrs(".storage"), h2("Storage"), words(p(Scripts.unbroken(text)))));
  }

  private static String capital(String text) {
    return text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
  }

  private static String ownStyle() {
    try (InputStream in = CardHtml.class.getResourceAsStream("card.css")) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
