/** Nobody gets less or more than so many times its even share of a kind of place over all practices: our own judgement. */
export const gentleBounds = { least: 0.6, most: 1.4 } as const
