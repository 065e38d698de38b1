/** Help for those who write rules: what is known about a book while its files are being typed. Nothing here needs a window. */
package org.setwright.writing;
