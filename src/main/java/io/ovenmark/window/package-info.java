/**
 * The bake window: from pieces with oven temperature, time and what was found to where every limit
 * holds, how sure that is, and which piece to bake next. It may use {@code measure}, {@code bake}
 * and what lies below; matrices are ojAlgo's, distributions those of Apache Commons Statistics.
 * Start with {@link io.ovenmark.window.BakeWindow}.
 */
package io.ovenmark.window;
