/** One class for each thing that a person asks. */
package drumline.app.ask;
