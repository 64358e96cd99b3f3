/**
 * Movements from standard input, one a line: {@link org.glintery.stash.posting.PostStream} reads, books and answers. No
 * work for a line is in proportion to the workshop: spots and codes are looked up once and remembered.
 */
package org.glintery.stash.posting;
