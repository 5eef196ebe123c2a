import 'server-only'

/** Whose hand wrote something, and when. `personId` null: no person of the club, such as an import by the command. */
export type Author = { readonly personId: string | null; readonly at: Date }
