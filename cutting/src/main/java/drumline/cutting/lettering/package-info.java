/** A plain engraving alphabet of single strokes, and the way the cutter travels for a text. */
package drumline.cutting.lettering;
