/** The one channel between page and service; what may be called on it is the contract's table. */
export const callChannel = "flocwright:call";

/** The scheme the screens are served under: pages of this app and nothing else. */
export const appScheme = "flocwright";
export const appOrigin = `${appScheme}://app`;
