/** What is different between two editions of a book, rule by rule and job by job. */
package org.setwright.editions.compare;
