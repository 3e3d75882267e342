/**
 * House rules over modules: who may use whom, and which library. The classes in {@code
 * drumline.guard.crooked} break each rule once, so that a test can show that it bites.
 */
package drumline.guard.module;
