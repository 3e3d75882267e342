/** What the sheets of a study say, filled from its results. */
package drumline.app.report;
