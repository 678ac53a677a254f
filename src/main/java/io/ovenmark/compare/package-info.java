/**
 * Two worksheets and their bakes held against each other: what changed, what that did to the
 * figures, and what may be concluded from the outcomes. It may use {@code worksheet}, {@code goal},
 * {@code change} and what lies below them; it knows neither Git nor JSON nor how it is shown. Start
 * with {@link io.ovenmark.compare.Comparison}.
 */
package io.ovenmark.compare;
