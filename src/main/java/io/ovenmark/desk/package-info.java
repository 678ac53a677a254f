/**
 * What Ovenmark does for whoever asks, on the command line or in the page: one class for each verb,
 * and the records of its answers, which are the shapes of {@code --json} and of the web API alike.
 * It may use everything below it; it knows neither console nor HTTP. Start with {@link
 * io.ovenmark.desk.ShowFormula} and {@link io.ovenmark.desk.Json}.
 */
package io.ovenmark.desk;
