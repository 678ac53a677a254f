/**
 * The card of a formula: one page with amounts, method, oven and macros, for print, for a page of
 * its own, for text fields and for programs. Two cards of the same revision with the same choices
 * are the same to the byte.
 */
package io.ovenmark.publish.card;
