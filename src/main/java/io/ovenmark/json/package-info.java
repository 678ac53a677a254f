/**
 * JSON as Ovenmark keeps it on disk: read with positions, written in one canonical form. It may use
 * only the JDK and the Jackson streaming parser, which no other domain package sees. Start with
 * {@link io.ovenmark.json.JsonReader}, {@link io.ovenmark.json.Fields} and {@link
 * io.ovenmark.json.CanonicalJson}.
 */
package io.ovenmark.json;
