package io.ovenmark.web;

import io.javalin.http.Context;
import io.ovenmark.desk.Desk;
import io.ovenmark.desk.FilterTimeline;
import io.ovenmark.desk.FindInHistory;
import io.ovenmark.desk.Search;
import io.ovenmark.desk.SearchViews;
import java.util.List;

/** Words in the history: the search over all formulas, and the filter of one timeline. */
final class SearchArea implements Area {
  private static final int HITS = 5;
  private static final int HITS_OF_ONE = 200;

  private final Desk desk;

  /**
   * How far the reading of the history is, as an answer of its own.
   *
   * @param reading null when all has been read
   */
  record Progress(SearchViews.Reading reading) {}

  SearchArea(Desk desk) {
    this.desk = desk;
  }

  @Override
  public void addTo(Routes routes) {
    routes
        .question("search", this::find)
        .question("search/reading", context -> new Progress(new FindInHistory(desk).reading()))
        .order("search/go-on", context -> new Progress(new FindInHistory(desk).begin(true)))
        .order("search/stop", context -> new Progress(new FindInHistory(desk).stop()))
        .question(
            "timeline/filter",
            context ->
                new FilterTimeline(desk)
                    .call(Asked.address(desk, context, "line"), search(context)));
  }

  private SearchViews.Found find(Context context) {
    FindInHistory verb = new FindInHistory(desk);
    Search search = search(context);
    verb.begin(false);
    return verb.call(search, search.line().isPresent() ? HITS_OF_ONE : HITS);
  }

  private Search search(Context context) {
    return Search.read(
        desk,
        new Search.Texts(
            context.queryParam("words"),
            context.queryParam("finding"),
            context.queryParam("ingredient"),
            context.queryParam("person"),
            context.queryParam("since"),
            context.queryParam("until"),
            context.queryParam("formula"),
            kinds(context)));
  }

  private static List<String> kinds(Context context) {
    return Asked.optional(context, "kinds").map(text -> List.of(text.split(","))).orElse(List.of());
  }
}
