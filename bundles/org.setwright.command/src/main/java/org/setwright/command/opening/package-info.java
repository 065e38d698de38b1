/** Finding, reading and compiling the rule book that a word is about, and the job or setting it names. */
package org.setwright.command.opening;
