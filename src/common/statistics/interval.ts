/** Both ends belong to it. */
export type Interval = { readonly low: number; readonly high: number }

/** So many of so many tries. */
export type Hits = { readonly hits: number; readonly tries: number }
