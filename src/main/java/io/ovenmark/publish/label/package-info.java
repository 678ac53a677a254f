/**
 * What the figures of a formula would be on a label: rounded by the rules of the United States and
 * of the European Union, with allergens and the claims that they would meet or miss. It is an aid
 * for development, never an approval: local law and licensed practice decide. It may use {@code
 * worksheet} and what is below it; it knows neither files nor Git. Start with {@link
 * io.ovenmark.publish.label.Label}.
 */
package io.ovenmark.publish.label;
