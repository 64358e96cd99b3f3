/**
 * The club: {@link org.glintery.club.Member members} with a key each, and the {@link org.glintery.club.Room} in which they
 * share {@link org.glintery.club.SignedDocument signed documents}. Each document is owned by one member, so that no two edits
 * conflict; its version counter alone says which is newer, never a clock. {@link org.glintery.club.RoomCopy} is what one
 * member accepted so far; it needs no room to be read.
 */
package org.glintery.club;
