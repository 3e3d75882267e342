/** What commands share: where they write, how they end. */
package drumline.cli.screen;
