/** A ground and its size in metres, by the name that sessions have as their place. */
export type Ground = { readonly place: string; readonly lengthM: number; readonly widthM: number }
