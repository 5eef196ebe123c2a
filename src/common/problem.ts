/** Something wrong with what came in: where it stands, and a sentence that says what is wrong and what would be right. */
export type Problem = { readonly path: string; readonly message: string }
