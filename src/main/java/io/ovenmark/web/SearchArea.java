package io.ovenmark.web;

import io.javalin.http.Context;
import io.ovenmark.desk.Desk;
import io.ovenmark.desk.FilterTimeline;
import io.ovenmark.desk.FindInHistory;
import io.ovenmark.desk.Progress;
import io.ovenmark.desk.Search;
import io.ovenmark.desk.SearchViews;
import java.util.List;

/** Words in the history: the search over all formulas, and the filter of one timeline. */
final class SearchArea implements Area {
  private static final int HITS = 5;
  private static final int HITS_OF_ONE = 200;

  private final Desk desk;
  private final Tasks tasks;

  SearchArea(Desk desk, Tasks tasks) {
    this.desk = desk;
    this.tasks = tasks;
  }

  @Override
  public void addTo(Routes routes) {
    routes
        .question("search", this::find)
        .order(
            "search/read",
            context ->
                tasks.begin(
                    "search", "Reading the notes and steps of all revisions", this::read))
        .question(
            "timeline/filter",
            context ->
                new FilterTimeline(desk)
                    .call(Asked.address(desk, context, "line"), search(context)));
  }

  private SearchViews.Found find(Context context) {
    FindInHistory verb = new FindInHistory(Asked.desk(desk, context));
    Search search = search(context);
    verb.readIfQuick();
    return verb.call(search, search.line().isPresent() ? HITS_OF_ONE : HITS);
  }

  private Object read(Progress progress) {
    new FindInHistory(desk).read(progress);
    return null;
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
