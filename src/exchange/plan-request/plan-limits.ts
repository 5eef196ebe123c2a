/** What is more is a mistake, or meant to be a burden. Weeks and metres are as the book keeps them. */
export const planLimits = {
  practices: 60,
  met: 300,
  spans: 100,
  themes: 200,
  blocks: 100,
  designs: 200,
  players: 60,
  weeks: 60,
  metres: 200,
  /** More seconds than a season has of practice. */
  seconds: 1e7,
  draws: 10_000,
  /** Themes met by designs, over all practices. */
  choices: 20_000,
  idLetters: 80,
} as const
