/** What to prove when the equipment is started: the checks that rules ask for, in the order of a start-up. */
package org.setwright.engine.startup;
