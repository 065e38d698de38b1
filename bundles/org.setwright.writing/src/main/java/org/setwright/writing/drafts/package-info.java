/** What has been typed and not saved, kept beside the book so that it outlives a crash. */
package org.setwright.writing.drafts;
