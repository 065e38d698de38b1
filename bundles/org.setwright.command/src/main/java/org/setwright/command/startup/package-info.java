/** The word "startup": what to prove when the equipment of a job is started, step by step. */
package org.setwright.command.startup;
