/** How much a set may be asked for, and how many specimens are compared for it at most. */
export const mostWanted = 20;
/** Those that show most of the wanted come first. */
export const mostCandidates = 500;
