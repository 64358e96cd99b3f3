package org.glintery.records;

/** A blob that the workshop holds; its bytes are a file in the pictures folder. */
record KeptBlob(String hash, String mediaType, long size) {}
