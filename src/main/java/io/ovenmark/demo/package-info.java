/**
 * The demo: the invented Saltmarsh bench, told as dated events with formulas, bakes, foods, goals
 * and drawn pictures, from which a demo notebook is built. It may use {@code notebook} and below;
 * only {@link io.ovenmark.demo.DemoNotebook} needs the notebook itself. Start with {@link
 * io.ovenmark.demo.DemoScript}.
 */
package io.ovenmark.demo;
