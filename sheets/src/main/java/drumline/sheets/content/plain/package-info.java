/** What every part of a study may carry: a picture, a tone. */
package drumline.sheets.content.plain;
