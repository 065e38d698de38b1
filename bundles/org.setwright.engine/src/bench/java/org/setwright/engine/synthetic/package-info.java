/** Rule books and jobs made up by the thousand from a seed, in the shapes that books written by people have. */
package org.setwright.engine.synthetic;
