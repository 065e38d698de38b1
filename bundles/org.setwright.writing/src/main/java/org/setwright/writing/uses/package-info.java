/** Where settings, facts, findings and the shop's own values stand in a book, jobs included, and giving them another name. */
package org.setwright.writing.uses;
