/**
 * Sums of thirds and sevenths come out a hair beside the exact number, in another order another hair. What lies this near
 * to an edge, in seconds or turns, lies on it, so that the order of rows never decides anything.
 */
export const noise = 1e-6
