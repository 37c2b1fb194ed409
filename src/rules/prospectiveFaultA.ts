/** The fault current that a loop of this impedance lets through, by Ohm's law. */

/** In amperes, from ohms of the loop and the nominal voltage to earth. */
export const prospectiveFaultA = (loopOhms: number, volts = 230): number => volts / loopOhms
