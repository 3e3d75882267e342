/** Parting, and the face that it leaves. */
package drumline.route.parting;
