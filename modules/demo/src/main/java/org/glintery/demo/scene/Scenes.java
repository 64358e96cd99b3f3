package org.glintery.demo.scene;

/** What there is to paint. */
public final class Scenes {
    public static final Scene ROPE_WALK = new RopeWalk();
    public static final Scene BOATYARD_CRANE = new BoatyardCrane();
    public static final Scene SIGNAL_BOARD = new SignalBoard();
    public static final Scene LAST_FERRY = new LastFerry();
    public static final Scene NET_LOFT = new NetLoft();
    public static final Scene HARBOUR_CHART = new HarbourChart();
    public static final Scene BREAKWATER = new Breakwater();
    public static final Scene QUAY_HOUSES = new QuayHouses();
    public static final Scene LONG_PIER = new LongPier();
    public static final Scene CABLE_FERRY = new CableFerry();
    public static final Scene CHANDLERY_SHELVES = new ChandleryShelves();
    public static final Scene OILSKINS = new Oilskins();
    public static final Scene ROWING_BOATS = new RowingBoats();
    public static final Scene PILOT_BOAT = new PilotBoat();
    public static final Scene TIDE_FLATS = new TideFlats();
    public static final Scene LOCK_GATES = new LockGates();
    public static final Scene TIN_LABEL = new TinLabel();
    public static final Scene PAIL_LABEL = new PailLabel();

    private Scenes() {}
}
