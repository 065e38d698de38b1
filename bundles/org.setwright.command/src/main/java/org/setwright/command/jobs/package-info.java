/** The word "jobs": which jobs a book holds. */
package org.setwright.command.jobs;
