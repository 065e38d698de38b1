/** The words "check", which reads a book and runs its jobs against what they expect, and "accept", which takes a new outcome for right. */
package org.setwright.command.check;
