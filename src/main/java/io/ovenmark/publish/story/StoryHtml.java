package io.ovenmark.publish.story;

import static j2html.TagCreator.attrs;
import static j2html.TagCreator.body;
import static j2html.TagCreator.dd;
import static j2html.TagCreator.div;
import static j2html.TagCreator.dl;
import static j2html.TagCreator.document;
import static j2html.TagCreator.dt;
import static j2html.TagCreator.each;
import static j2html.TagCreator.figcaption;
import static j2html.TagCreator.figure;
import static j2html.TagCreator.footer;
import static j2html.TagCreator.h1;
import static j2html.TagCreator.h2;
import static j2html.TagCreator.h3;
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
import static j2html.TagCreator.span;
import static j2html.TagCreator.strong;
import static j2html.TagCreator.style;
import static j2html.TagCreator.table;
import static j2html.TagCreator.tbody;
import static j2html.TagCreator.td;
import static j2html.TagCreator.th;
import static j2html.TagCreator.title;
import static j2html.TagCreator.tr;
import static j2html.TagCreator.ul;

import io.ovenmark.publish.card.Card;
import j2html.tags.ContainerTag;
import j2html.tags.DomContent;
import j2html.tags.specialized.SectionTag;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;

/**
 * A story as one page of HTML that needs nothing else: its style and its pictures are within it,
 * and nothing of it runs. Every text is escaped by the library that writes it.
 */
public final class StoryHtml {
  private static final String STYLE = ownStyle();

  private static final String WAYS =
      "Numbers below are revisions. Filled dots are told of here, small hollow ones lie between; a"
          + " dashed line leads over what was not measured or is not known.";

  private StoryHtml() {}

  /**
   * Writes it.
   *
   * @param story the story
   * @return the page
   */
  public static String of(Story story) {
    return document(
            html(
                    head(
                        meta().withCharset("utf-8"),
                        meta()
                            .withName("viewport")
                            .withContent("width=device-width, initial-scale=1"),
                        title(story.title()),
                        style(rawHtml(STYLE))),
                    body(
                        main(
                            opening(story),
                            ol(each(story.steps(), step -> li(step(story, step))))
                                .withClass("steps"),
                            ways(story),
                            iff(
                                story.closing(),
                                text -> div(attrs(".closing"), each(paragraphs(text), t -> t))),
                            card(story.card()),
                            footer(
                                p(
                                    words(span(story.card().address())),
                                    span(" · " + story.card().date().orElse("not committed")))))
                            .attr("aria-label", "Story of " + story.name())))
                .withLang("en"))
        + "\n";
  }

  /** A text of any script runs in its own direction. */
  private static <T extends ContainerTag<T>> T words(T tag) {
    return tag.attr("dir", "auto");
  }

  private static DomContent opening(Story story) {
    return header(
        div(
            attrs(".title"),
            words(h1(story.title())),
            iff(story.by(), by -> words(p(by)).withClass("by")),
            p(story.span()).withClass("span"),
            iff(story.opening(), text -> div(each(paragraphs(text), t -> t)))),
        iff(story.cover(), photo -> photo(photo)));
  }

  private static DomContent photo(StoryPhoto photo) {
    return img().withSrc(photo.dataAddress()).withAlt(photo.alternative());
  }

  private static DomContent step(Story story, Story.Step step) {
    return section(
        attrs(".step"),
        words(h2(step.heading())),
        p(attrs(".where"), words(span(step.address())), span(" · " + step.date())),
        div(
            attrs(".told"),
            iff(
                step.photo(),
                photo ->
                    figure(
                        photo(photo), iff(photo.caption(), text -> words(figcaption(text))))),
            div(
                own(step),
                step.changed().isEmpty()
                    ? null
                    : part("What changed", step.changed()),
                part("What was seen", step.seen()),
                iff(step.move(), move -> moved(story, step, move)),
                iff(step.credit(), text -> words(p(text)).withClass("credit")))));
  }

  private static DomContent own(Story.Step step) {
    return iff(step.words(), text -> div(attrs(".own"), each(paragraphs(text), t -> t)));
  }

  private static DomContent part(String heading, List<String> sentences) {
    return div(
        attrs(".part"), h3(heading), each(sentences, sentence -> words(p(sentence))));
  }

  private static DomContent moved(Story story, Story.Step step, Move move) {
    String from = story.before(step).map(Story.Step::address).orElse("");
    return div(
        attrs(".part"),
        h3("What moved"),
        p(span(capital(move.label()) + " "), strong(move.difference())),
        StoryCharts.move(move),
        p(attrs(".sides"),
            span(attrs(".before"), "hollow: " + from), span(", "),
            span(attrs(".after"), "filled: " + step.address())));
  }

  private static DomContent ways(Story story) {
    List<Arc> drawable = story.arcs().stream().filter(Arc::isDrawable).toList();
    if (drawable.isEmpty()) {
      return null;
    }
    return section(
        attrs(".ways"),
        h2("How the figures went"),
        p(WAYS).withClass("quiet"),
        div(
            attrs(".arcs"),
            each(
                drawable,
                arc ->
                    figure(
                        words(
                            figcaption(
                                span(capital(arc.heading())),
                                iff(
                                    arc.goal(),
                                    goal -> span(" · " + goal).withClass("goal-word")))),
                        StoryCharts.arc(arc)))));
  }

  private static SectionTag card(Card card) {
    return section(
        attrs(".card"),
        h2("The formula as it is now"),
        words(p(card.yield())).withClass("yield"),
        div(
            attrs(".columns"),
            div(ingredients(card), figures(card)),
            div(method(card), oven(card), mind(card))));
  }

  private static DomContent ingredients(Card card) {
    return div(
        h3("Ingredients"),
        table(
            tbody(
                each(
                    card.ingredients(),
                    each ->
                        tr(
                            td(each.mass()).withClass("mass"),
                            words(
                                td(
                                    span(each.name()),
                                    iff(
                                        each.measure(),
                                        text -> span(" (" + text + ")").withClass("quiet")),
                                    iff(
                                        each.note(),
                                        text -> span(", " + text).withClass("quiet")))))))));
  }

  private static DomContent figures(Card card) {
    return div(
        h3("A piece"),
        table(
            tbody(
                each(
                    card.figures(),
                    fact ->
                        tr(
                            th(capital(fact.label())).attr("scope", "row"),
                            td(fact.text())
                                .withClass(fact.known() ? "figure" : "figure partly"))))),
        p(String.join(" ", card.basis())).withClass("quiet"));
  }

  private static DomContent method(Card card) {
    return div(
        h3("Method"),
        card.method().isEmpty()
            ? p("Not stated.")
            : ol(each(card.method(), step -> words(li(step)))));
  }

  private static DomContent oven(Card card) {
    return div(
        h3("Oven"),
        card.stages().isEmpty()
            ? p("Not stated.")
            : ul(each(card.stages(), stage -> words(li(stage.inOneLine())))));
  }

  private static DomContent mind(Card card) {
    return div(
        attrs(".mind"),
        h3("To mind"),
        ul(each(card.cautions(), caution -> words(li(caution)))),
        iff(card.storage(), text -> div(h3("Storage"), words(p(text)))));
  }

  private static List<DomContent> paragraphs(String text) {
    return text.strip().lines().map(String::strip).filter(line -> !line.isEmpty())
        .<DomContent>map(line -> words(p(line)))
        .toList();
  }

  private static String capital(String text) {
    int first = Character.charCount(text.codePointAt(0));
    return text.substring(0, first).toUpperCase(Locale.ROOT) + text.substring(first);
  }

  private static String ownStyle() {
    try (InputStream in = StoryHtml.class.getResourceAsStream("story.css")) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
