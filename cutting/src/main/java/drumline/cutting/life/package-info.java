/** Tool life, pieces per edge, minutes lost for changes, and the speeds that pay. */
package drumline.cutting.life;
