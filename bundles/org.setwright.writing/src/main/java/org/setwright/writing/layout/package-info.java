/** The outward form of rule files: indents and blanks, and lines taken out of use by making them comments. */
package org.setwright.writing.layout;
