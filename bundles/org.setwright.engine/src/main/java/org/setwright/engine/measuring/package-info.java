/** Books of any size to measure with. No part of the program uses it. */
package org.setwright.engine.measuring;
