package io.ovenmark.publish.card;

import static j2html.TagCreator.attrs;
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
import static j2html.TagCreator.span;
import static j2html.TagCreator.style;
import static j2html.TagCreator.table;
import static j2html.TagCreator.tbody;
import static j2html.TagCreator.td;
import static j2html.TagCreator.title;
import static j2html.TagCreator.tr;
import static j2html.TagCreator.ul;

import j2html.tags.DomContent;
import j2html.tags.specialized.SectionTag;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Locale;

/**
 * A card as one page of HTML that needs nothing else: its style and its picture are within it, and
 * nothing of it runs. Every text is escaped by the library that writes it.
 */
public final class CardHtml {
  private static final String STYLE = ownStyle();

  private CardHtml() {}

  /**
   * Writes it.
   *
   * @param card the card
   * @param paper the paper that it is printed on
   * @return the page
   */
  public static String of(Card card, CardChoices.Paper paper) {
    String page = "@page { size: " + paper.size() + "; margin: 0; }\n";
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
                        attrs(".paper-" + paper.key()),
                        main(
                            attrs(".sheet"),
                            header(
                                div(
                                    words(h1(card.name())),
                                    iff(
                                        card.description(),
                                        text -> words(p(text)).withClass("description")),
                                    words(p(card.yield())).withClass("yield")),
                                iff(
                                    card.photo(),
                                    photo ->
                                        img()
                                            .withSrc(photo.dataAddress())
                                            .withAlt(photo.alternative()))),
                            div(
                                attrs(".columns"),
                                div(ingredients(card), figures(card)),
                                div(method(card), oven(card), mind(card))),
                            footer(p(CardText.origin(card))))
                            .attr("aria-label", "Card of " + card.name())))
                .withLang("en"))
        + "\n";
  }

  /** A text of any script runs in its own direction. */
  private static <T extends j2html.tags.ContainerTag<T>> T words(T tag) {
    return tag.attr("dir", "auto");
  }

  private static SectionTag ingredients(Card card) {
    return section(
        h2("Ingredients"),
        table(
            attrs(".ingredients"),
            tbody(
                each(
                    card.ingredients(),
                    each ->
                        tr(
                            td(each.mass()).withClass("mass"),
                            words(
                                td(
                                    words(span(each.name())),
                                    iff(
                                        each.note(),
                                        note -> words(small(" " + note)).withClass("note")))),
                            td(each.measure().orElse("")).withClass("measure"))))));
  }

  private static SectionTag method(Card card) {
    return section(
        h2("Method"),
        card.method().isEmpty()
            ? p("Not stated.")
            : ol(each(card.method(), step -> words(li(step)))));
  }

  private static SectionTag oven(Card card) {
    return section(
        h2("Oven"),
        card.stages().isEmpty()
            ? p("Not stated.")
            : ul(each(card.stages(), stage -> words(li(stage.inOneLine())))).withClass("oven"));
  }

  private static SectionTag figures(Card card) {
    return section(
        h2("A piece"),
        dl(
            attrs(".figures"),
            each(
                card.figures(),
                fact ->
                    div(
                        dt(capital(fact.label())),
                        dd(fact.text()).withCondClass(!fact.known(), "partly")))),
        small(String.join(" ", card.basis())).withClass("basis"));
  }

  private static DomContent mind(Card card) {
    return div(
        section(
            attrs(".mind"),
            h2("To mind"),
            ul(each(card.cautions(), caution -> words(li(caution))))),
        iff(card.storage(), text -> section(h2("Storage"), words(p(text)))));
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
