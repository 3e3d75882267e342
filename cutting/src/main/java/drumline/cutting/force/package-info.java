/** Cutting force, torque and power from the chip section: the laws that every operation shares. */
package drumline.cutting.force;
