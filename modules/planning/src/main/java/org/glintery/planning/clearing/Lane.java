package org.glintery.planning.clearing;

/**
 * A way for packets of one kind: from an offer straight to a want, from an offer to a heap at the organiser's, or from such
 * a heap to a want. All numbers are places; none is -1.
 *
 * @param link which parcel it goes in
 */
record Lane(int offer, int want, int heap, int link) {

    static final int NONE = -1;

    boolean straight() {
        return heap == NONE;
    }
}
