/** The words "coverage" and "strength": whether the saved jobs try a book out enough. */
package org.setwright.command.fitness;
