package io.ovenmark.web;

/** One part of what can be asked: it names its own routes, and its handlers only pass on. */
interface Area {
  /**
   * Adds the routes of this part.
   *
   * @param routes where to add them
   */
  void addTo(Routes routes);
}
