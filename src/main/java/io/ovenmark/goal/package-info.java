/**
 * Goals: limits on a formula's figures, allergens and foods it must be free of, and whether a
 * worksheet keeps them. It may use {@code worksheet} and below. Start with {@link
 * io.ovenmark.goal.Goal} and {@link io.ovenmark.goal.GoalCheck}.
 */
package io.ovenmark.goal;
