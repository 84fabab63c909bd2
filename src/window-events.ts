/**
 * Events on the page's own window by which the desktop host and the screens agree before the window closes: the host
 * says `settle`, the page writes what is still under way and answers `settled`, or `unsettled` where something is not
 * on disk.
 */
export const settleEvent = "flocwright:settle";
export const settledEvent = "flocwright:settled";
export const unsettledEvent = "flocwright:unsettled";
