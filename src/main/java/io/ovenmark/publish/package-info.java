/** What is given to others when a formula is done. */
package io.ovenmark.publish;
