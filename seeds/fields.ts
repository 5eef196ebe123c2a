/** Where the demo club plays and practises. */
export const fields = { main: 'Lower Mill Field', small: 'Orchard Cage' } as const
