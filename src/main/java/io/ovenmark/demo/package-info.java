/**
 * The demo: the invented Saltmarsh bench, told as dated events with formulas, bakes, foods, goals and
 * drawn pictures, from which a demo notebook is built. Reading and drawing may use {@code goal},
 * {@code bake}, {@code formula}, {@code pantry}, {@code measure} and {@code json}, and nothing of a
 * notebook. Start with {@link io.ovenmark.demo.DemoScript}.
 */
package io.ovenmark.demo;
