/** What a spindle drive can give: speed, torque, power, run-up and overload. */
package drumline.cutting.drive;
