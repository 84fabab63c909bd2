/** The one channel that the page calls the service on; what may be called on it is the contract's table. */
export const callChannel = "flocwright:call";

/** The host asks the page to write what is under way; the page answers whether all of it is on disk. */
export const settleChannel = "flocwright:settle";
export const settledChannel = "flocwright:settled";

/** The scheme the screens are served under: pages of this app and nothing else. */
export const appScheme = "flocwright";
export const appOrigin = `${appScheme}://app`;

/** The one document there is; rooms are told apart behind its #. */
export const home = `${appOrigin}/index.html`;
