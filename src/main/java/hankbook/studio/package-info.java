/** The use cases, one class for each thing a person does. */
@NullMarked
package hankbook.studio;

import org.jspecify.annotations.NullMarked;
