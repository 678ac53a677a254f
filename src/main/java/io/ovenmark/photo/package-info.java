/**
 * Pictures as bytes: normalised for the notebook, made smaller for the page, and examined. It knows
 * nothing else of Ovenmark and uses the JDK's image readers, the WebP reader and the metadata
 * library only. Start with
 * {@link io.ovenmark.photo.PhotoNormaliser}.
 */
package io.ovenmark.photo;
