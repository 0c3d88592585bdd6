package trueseam.fitting.alteration;

import trueseam.fitting.tissue.Place;

/**
 * A place of the side edge and how far out it shall come.
 *
 * @param place the place
 * @param mark what its mark is called
 * @param outMm outwards, mm; 0 to come back to the old line
 */
record SideLevel(Place place, String mark, double outMm) {}
