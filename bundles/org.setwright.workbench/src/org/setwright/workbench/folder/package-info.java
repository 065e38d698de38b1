/**
 * The folder of the open rule book as the platform sees it: opened without writing anything into it, watched for
 * changes, its problems marked, its places found again.
 */
package org.setwright.workbench.folder;
