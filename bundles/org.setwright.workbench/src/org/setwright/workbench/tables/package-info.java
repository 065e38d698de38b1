/** Look-up tables edited as a grid, kept as plain comma-separated text. */
package org.setwright.workbench.tables;
