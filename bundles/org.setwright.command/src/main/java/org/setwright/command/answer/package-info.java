/** What every word answers with: a {@link org.setwright.command.answer.Report}, printed as text, JSON or CSV. */
package org.setwright.command.answer;
